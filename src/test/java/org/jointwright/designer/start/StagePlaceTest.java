package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Where the window stands, from one start to the next. */
@ExtendWith(NeedsWindow.class)
class StagePlaceTest {
  @TempDir private Path folder;

  private record Seen(double x, double y, double width, double height) {}

  /** Where a window comes up; then it is moved and closed. */
  private Seen opened(double toX, double toWidth) {
    Stage stage =
        Rig.get(
            () -> {
              Stage s = new Stage();
              s.setMinWidth(300);
              s.setWidth(500);
              s.setHeight(400);
              StagePlace.remember(s, folder);
              s.show();
              return s;
            });
    Rig.pulses(3);
    Seen seen =
        Rig.get(() -> new Seen(stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight()));
    Rig.get(
        () -> {
          stage.setX(toX);
          stage.setWidth(toWidth);
          return true;
        });
    Rig.pulses(3);
    Rig.get(
        () -> {
          stage.close();
          return true;
        });
    return seen;
  }

  @Test
  void itComesUpWhereItStoodAndAsLarge() {
    opened(37, 640);
    Seen again = opened(37, 640);
    assertThat(again.x()).isEqualTo(37);
    assertThat(again.width()).isEqualTo(640);
    assertThat(again.height()).isEqualTo(400);
  }

  @Test
  void aPlaceThatNoScreenShowsAnyMoreIsPassedOver() throws IOException {
    Files.writeString(folder.resolve("window.txt"), "90000 90000 640 480 false\n");
    assertThat(opened(10, 500).x()).isLessThan(90000);
  }

  @Test
  void aSpoiltNoteIsPassedOver() throws IOException {
    for (String text : new String[] {"", "a b c d e", "1 2 3", "NaN 0 9 9 x", "1 2 0 0 false"}) {
      Files.writeString(folder.resolve("window.txt"), text);
      assertThat(opened(10, 500).width()).as(text).isEqualTo(500);
    }
  }
}
