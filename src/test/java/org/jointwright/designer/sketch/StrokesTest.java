package org.jointwright.designer.sketch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which way a side is understood to run. */
class StrokesTest {
  /** Ways in degrees counter-clockwise from the right of the paper. */
  @ParameterizedTest
  @CsvSource({
    // down the paper, right stays the right of the paper
    "-90, -45, -45",
    "-90, 45, -135",
    // up
    "90, -45, 45",
    "90, 45, 135",
    // slanted down to the left, and up to the right
    "-135, -45, -90",
    "-135, 45, 180",
    "45, -45, 0",
    // straight to a side of the paper there is no other than the walker's
    "0, -45, -45",
    "0, 45, 45",
    "180, -30, 150",
    // as good as straight, and just not
    "-89, -45, -44",
    "-91, -45, -46",
  })
  void degreesLeadToTheSideOfThePaperThatIsNamed(double before, double turn, double expected) {
    Point way = new Point(1, 0).turned(Math.toRadians(before));
    Draft draft =
        new Draft(
            List.of(Vertex.at(new Point(0, 0)), Vertex.at(way.times(120))), Optional.empty(), "");
    Point direction = Strokes.direction(draft, new Said.Turn.Seen(turn));
    Point wanted = new Point(1, 0).turned(Math.toRadians(expected));
    assertThat(direction.distance(wanted)).isCloseTo(0, within(1e-9));
    Point walked = Strokes.direction(draft, new Said.Turn.By(turn));
    assertThat(walked.distance(way.turned(Math.toRadians(turn)))).isCloseTo(0, within(1e-9));
  }
}
