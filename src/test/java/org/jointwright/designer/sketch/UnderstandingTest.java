package org.jointwright.designer.sketch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a turn leads to is said where the plan’s sides and the walker’s are not the same. */
class UnderstandingTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);

  /** Ways of the side before in degrees counter-clockwise from the right of the paper. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-90|9' right 45|turned 45° right as you walk it, so to the left on the plan",
        "-90|9' left 45|turned 45° left as you walk it, so to the right on the plan",
        "-45|9' right 45|so to the left on the plan",
        "-135|9' left 45|so to the right on the plan",
        "-31|9' right 45|so to the left on the plan",
        "-29|9' right 45|right from the side before",
        "90|9' right 45|right from the side before",
        "90|9' left 45|left from the side before",
        "0.5|9' right 30|right from the side before",
        "0|9' right 30|right from the side before",
        "45|9' right 45|right from the side before",
      })
  void theOtherSideOfThePlanIsSaid(double before, String typed, String said) {
    Point way = new Point(1, 0).turned(Math.toRadians(before));
    Draft draft =
        new Draft(
            List.of(Vertex.at(new Point(0, 0)), Vertex.at(way.times(120))), Optional.empty(), "");
    Said read = Sentence.read(typed, new Vocabulary(WORDS), LengthUnit.FOOT);
    assertThat(new Understanding(draft, WORDS).of(read)).contains(said);
  }
}
