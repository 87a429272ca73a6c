package org.jointwright.layout.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Drafts;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Move;
import org.jointwright.plan.JointKind;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

/** On a slab 200 in square: a line across it, and one that ends on it. */
class DragsTest {
  private static final Draft SQUARE = Drafts.of(0, 0, 200, 0, 200, 200, 0, 200);
  private static final Point MEETING = new Point(80, 100);
  private static final Draft TEE =
      SQUARE.cutAll(List.of(line(0, 100, 200, 100), line(80, 0, 80, 100)));

  private static Move line(double x1, double y1, double x2, double y2) {
    return Move.between(new Point(x1, y1), new Point(x2, y2), Move.Reach.PIECE);
  }

  private static Drags.Place placeAt(Draft draft, Point p) {
    return new Drags(draft)
        .places().stream().filter(x -> x.at().distance(p) < 0.01).findFirst().orElseThrow();
  }

  private static Draft dragged(Draft draft, Point from, Point to) {
    return draft.base().cutAll(new Drags(draft).dragged(from, to));
  }

  @Test
  void placesAreTheEndsEachOnce() {
    List<Drags.Place> places = new Drags(TEE).places();
    assertThat(places).hasSize(4);
    assertThat(placeAt(TEE, MEETING).tag()).as("stands on the first line").isZero();
    assertThat(placeAt(TEE, new Point(0, 100)).tag()).as("on an edge").isNegative();
  }

  @Test
  void aBendIsAPlaceOnceThoughTwoArmsEndThere() {
    Draft bent =
        SQUARE
            .cut(Move.bent(new Point(0, 60), new Point(100, 110), new Point(200, 60)))
            .orElseThrow();
    assertThat(new Drags(bent).places()).hasSize(3);
  }

  @Test
  void aPlaceOnAnEdgeSlidesAlongItAndStaysOffTheCorners() {
    Drags drags = new Drags(TEE);
    List<Point> to = drags.targets(placeAt(TEE, new Point(80, 0)), drags.places());
    assertThat(to).isNotEmpty().allMatch(p -> p.y() == 0 && p.x() > 1 && p.x() < 199);
    assertThat(to).contains(new Point(81, 0), new Point(79, 0), new Point(128, 0));
  }

  @Test
  void aPlaceAtACornerStays() {
    Draft diagonal = SQUARE.cut(line(0, 0, 200, 200)).orElseThrow();
    Drags drags = new Drags(diagonal);
    assertThat(drags.targets(placeAt(diagonal, new Point(0, 0)), drags.places())).isEmpty();
  }

  @Test
  void aMeetingPlaceIsBroughtToAnotherOneOrAlongTheJointsThatMeet() {
    Drags drags = new Drags(TEE);
    List<Point> to = drags.targets(placeAt(TEE, MEETING), drags.places());
    assertThat(to).isNotEmpty().allMatch(p -> p.x() == 80 || p.y() == 100);
  }

  /** The line across turns by its own end only; the one that ends on it keeps its place. */
  @Test
  void whatEndsElsewhereStays() {
    Draft moved = dragged(TEE, new Point(0, 100), new Point(0, 106));
    assertThat(moved.lines()).hasSize(2);
    Laid across = moved.line(0);
    assertThat(across.path().distance(new Point(0, 106))).isCloseTo(0, within(0.01));
    assertThat(across.path().distance(new Point(200, 100))).isCloseTo(0, within(0.01));
    assertThat(moved.line(1).path().start().x()).isCloseTo(80, within(0.01));
  }

  /** Where they meet both go along: the through line as it lies, the other by its end. */
  @Test
  void allCutsThatMeetAtAPlaceGoWithIt() {
    Draft moved = dragged(TEE, MEETING, new Point(90, 112));
    assertThat(moved.lines()).hasSize(2);
    assertThat(moved.line(0).path().start().y()).isCloseTo(112, within(0.01));
    assertThat(moved.line(0).path().end().y()).isCloseTo(112, within(0.01));
    Laid stem = moved.line(1);
    assertThat(stem.path().distance(new Point(80, 0))).isCloseTo(0, within(0.01));
    assertThat(stem.path().distance(new Point(90, 112))).isCloseTo(0, within(0.01));
  }

  @Test
  void aBendGoesWithWhatEndsOnIt() {
    Draft y =
        SQUARE.cutAll(
            List.of(
                Move.bent(new Point(0, 60), new Point(100, 110), new Point(200, 60)),
                line(100, 110, 100, 200)));
    Draft moved = dragged(y, new Point(100, 110), new Point(96, 120));
    assertThat(moved.lines()).hasSize(3);
    assertThat(moved.lines().get(0).end(true).distance(new Point(96, 120))).isLessThan(0.01);
    assertThat(moved.lines().get(1).end(true).distance(new Point(200, 60))).isLessThan(0.01);
    assertThat(moved.tally().ys()).as("still a Y").isEqualTo(1);
  }

  @Test
  void whatTheUserHoldsIsNoPlace() {
    Draft held = SQUARE.hold(line100(), JointKind.CONTRACTION);
    assertThat(new Drags(held).places()).isEmpty();
  }

  private static Edge line100() {
    return new Segment(new Point(0, 100), new Point(200, 100));
  }
}
