package org.jointwright.designer.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.View;
import org.jointwright.joint.Source;
import org.jointwright.measure.UnitSystem;
import org.jointwright.reason.LikelyCrack;
import org.jointwright.shape.Box;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** The word beside a likely crack stands clear of the joint, of its number, and of flags. */
class CrackMarksTest {
  private static final View VIEW = new View(new Point(0, 400), 1, 0);
  private static final Path JOINT = Path.straight(new Point(100, 200), new Point(300, 202));

  private static List<Box> words(List<Box> taken) {
    LikelyCrack crack =
        new LikelyCrack(new Point(100, 180), new Point(300, 202), new Source.OnJoint("J1"), 98);
    Words words = Words.english(UnitSystem.METRIC);
    return CrackMarks.of(List.of(crack), JOINT, taken, VIEW, words).stream()
        .filter(Mark.Words.class::isInstance)
        .map(m -> InSight.room((Mark.Words) m))
        .toList();
  }

  @Test
  void theWordStandsOnNeitherTheJointNorWhatIsWrittenThere() {
    Box word = words(List.of()).getFirst();
    for (int k = 0; k <= 20; k++) {
      Point on = VIEW.on(JOINT).edges().getFirst().at(k / 20.0);
      assertThat(word.holds(on)).isFalse();
    }
    Box moved = words(List.of(word)).getFirst();
    assertThat(moved.meets(word)).isFalse();
  }

  @Test
  void whereNothingIsFreeTheLineStandsAlone() {
    assertThat(words(List.of(new Box(0, 0, 400, 400)))).isEmpty();
  }
}
