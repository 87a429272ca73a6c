package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import org.jointwright.designer.state.Step;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Blank paper, and what is one click away from it. */
@ExtendWith(NeedsWindow.class)
class FirstStepsTest {
  private Rig rig;

  @BeforeEach
  void open() {
    rig = new Rig();
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private boolean isOffered() {
    return Rig.get(() -> rig.node0("first-steps").isVisible());
  }

  @Test
  void theSampleIsOneClickAwayAndInNoFile() {
    assertThat(isOffered()).isTrue();
    rig.clickOn("sample")
        .until(() -> !rig.designer().board().desk().plan().slabs().isEmpty())
        .laid();
    assertThat(rig.plan().slabs()).hasSize(3);
    assertThat(rig.desk().sight().step()).isEqualTo(Step.JOINTS);
    assertThat(rig.desk().papers().file()).isEmpty();
    assertThat(rig.desk().isKept()).as("nothing of the user's to lose").isTrue();
    assertThat(isOffered()).isFalse();
  }

  @Test
  void theOfferIsGoneOnceSomethingIsDrawn() {
    rig.type("20'");
    assertThat(isOffered()).isFalse();
    rig.key(KeyCode.ENTER).drawn("12' turn left", "20' turn left");
    assertThat(isOffered()).isFalse();
    rig.key(KeyCode.CONTROL, KeyCode.N);
    rig.clickOn("notice-leave");
    assertThat(isOffered()).as("on new paper").isTrue();
  }

  @Test
  void aPlanThatIsDroppedIsOpenedAndWorkIsAskedForFirst() {
    Path sample = Path.of("samples/shed-pad-with-a-drain.jointwright.json").toAbsolutePath();
    rig.drawn("20'", "12' turn left", "20' turn left");
    rig.act(() -> rig.designer().job().dropped(sample, Optional.empty()));
    assertThat(rig.desk().notice()).isPresent();
    assertThat(rig.plan().fixed()).isEmpty();
    rig.clickOn("notice-leave")
        .until(() -> !rig.designer().board().desk().plan().fixed().isEmpty());
    assertThat(rig.desk().papers().file()).contains(sample);
  }
}
