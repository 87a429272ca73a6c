package org.jointwright.layout.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.plan.JointKind;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

/** S1: tees and Ys of a draft, on a slab 200 in square. */
class MeetsTest {
  private static final Draft SQUARE = Drafts.of(0, 0, 200, 0, 200, 200, 0, 200);

  private static Move line(double x1, double y1, double x2, double y2) {
    return Move.between(new Point(x1, y1), new Point(x2, y2), Move.Reach.PIECE);
  }

  private static Meets meets(Move... moves) {
    Draft cut = SQUARE.cutAll(List.of(moves));
    assertThat(cut.moves()).as("cuts made").hasSize(moves.length);
    return Meets.of(cut.lines());
  }

  @Test
  void aJointThatEndsOnAnotherIsATee() {
    Meets found = meets(line(0, 100, 200, 100), line(80, 0, 80, 100));
    assertThat(found.ys()).isZero();
    assertThat(found.tees())
        .singleElement()
        .satisfies(t -> assertThat(t.at().distance(new Point(80, 100))).isLessThan(0.01))
        .satisfies(t -> assertThat(t.onward()).isEqualTo(new Point(0, 1)))
        .satisfies(t -> assertThat(t.line()).isEqualTo(1));
  }

  @Test
  void oneThatGoesOnBeyondIsNone() {
    Meets found = meets(line(0, 100, 200, 100), line(80, 0, 80, 100), line(80, 100, 80, 200));
    assertThat(found.tees()).isEmpty();
    assertThat(found.ys()).isZero();
  }

  /** Rules, S1: within an inch counts as meeting. */
  @Test
  void oneThatGoesOnWithinAnInchMeetsAndFartherOffDoesNot() {
    assertThat(meets(line(0, 100, 200, 100), line(80, 0, 80, 100), line(82, 100, 82, 200)).tees())
        .hasSize(2);
    assertThat(
            meets(line(0, 100, 200, 100), line(80, 0, 80, 100), line(80.9, 100, 80.9, 200)).tees())
        .isEmpty();
  }

  /** It may go on at an angle: what counts is that the crack is caught beyond. */
  @Test
  void oneThatGoesOnTurnedIsNoTee() {
    assertThat(meets(line(0, 100, 200, 100), line(80, 0, 80, 100), line(80, 100, 110, 200)).tees())
        .isEmpty();
  }

  @Test
  void threeThatMeetWithNoneRunningThroughAreAY() {
    Meets found =
        meets(
            Move.bent(new Point(0, 60), new Point(100, 110), new Point(200, 60)),
            line(100, 110, 100, 200));
    assertThat(found.ys()).isEqualTo(1);
    assertThat(found.tees()).isEmpty();
  }

  /** Under 20 degrees a bend still runs through: what ends on it is a tee. */
  @Test
  void aFaintBendRunsThrough() {
    Meets found =
        meets(
            Move.bent(new Point(0, 100), new Point(100, 110), new Point(200, 100)),
            line(100, 110, 100, 200));
    assertThat(found.tees()).hasSize(1);
    assertThat(found.ys()).isZero();
  }

  @Test
  void endsAtConstructionJointsAndEdgesAreNoTees() {
    Draft held =
        SQUARE.hold(new Segment(new Point(0, 100), new Point(200, 100)), JointKind.CONSTRUCTION);
    Draft cut = held.cut(line(80, 0, 80, 100)).orElseThrow();
    assertThat(cut.lines()).hasSize(2);
    assertThat(Meets.of(cut.lines()).tees()).isEmpty();
  }
}
