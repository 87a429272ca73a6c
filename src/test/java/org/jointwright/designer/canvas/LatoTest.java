package org.jointwright.designer.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.text.Font;
import org.jointwright.drawing.Weight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The image has the fonts as files beside it; wherever they come from, they are the same. */
class LatoTest {
  private static final Path FONTS = Path.of("src/main/resources/org/jointwright/fonts");

  @ParameterizedTest
  @EnumSource(Weight.class)
  void aFaceFromAFileIsTheOneThatIsPacked(Weight weight) {
    Font packed = Lato.packed(weight);
    Font read = Lato.inFolder(FONTS.toString(), weight).orElseThrow();
    assertThat(packed).isNotNull();
    assertThat(read.getName()).isEqualTo(packed.getName());
    assertThat(read.getFamily()).isEqualTo(packed.getFamily());
  }

  @Test
  void aFolderWithASpaceInItsNameIsRead(@TempDir Path folder) throws Exception {
    Path spaced = Files.createDirectory(folder.resolve("of the crew, 50 %"));
    Files.copy(FONTS.resolve("Lato-Bold.ttf"), spaced.resolve("Lato-Bold.ttf"));
    assertThat(Lato.inFolder(spaced.toString(), Weight.BOLD)).isPresent();
  }

  @Test
  void whatIsNoFontOrNoFolderIsPassedOver(@TempDir Path folder) throws Exception {
    Files.writeString(folder.resolve("Lato-Bold.ttf"), "no font");
    assertThat(Lato.inFolder(folder.toString(), Weight.BOLD)).isEmpty();
    assertThat(Lato.inFolder(folder.toString(), Weight.HEAVY)).isEmpty();
    assertThat(Lato.inFolder("\0", Weight.BOLD)).isEmpty();
  }
}
