package org.jointwright.layout.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.junit.jupiter.api.Test;

class BentTest {
  /** From the left to (100, 0), then up at a right angle. */
  private static final Bent ELBOW =
      Bent.through(new Point(0, 0), new Point(100, 0), new Point(100, 50));

  private static Segment segment(double x1, double y1, double x2, double y2) {
    return new Segment(new Point(x1, y1), new Point(x2, y2));
  }

  private static List<Double> places(Segment edge) {
    return ELBOW.crossings(edge).stream().map(Carrier.Crossing::place).toList();
  }

  @Test
  void placesAreInchesFromTheBendNegativeOnTheFirstArm() {
    assertThat(ELBOW.place(new Point(40, 3))).isCloseTo(-60, within(1e-9));
    assertThat(ELBOW.place(new Point(100, 0))).isCloseTo(0, within(1e-9));
    assertThat(ELBOW.place(new Point(97, 30))).isCloseTo(30, within(1e-9));
    for (double place : new double[] {-75, -0.5, 0, 12, 400}) {
      assertThat(ELBOW.place(ELBOW.at(place))).isCloseTo(place, within(1e-9));
      assertThat(ELBOW.distance(ELBOW.at(place))).isCloseTo(0, within(1e-9));
    }
  }

  @Test
  void itRunsTowardsTheBendAndThenAwayFromIt() {
    assertThat(ELBOW.direction(-10).distance(new Point(1, 0))).isCloseTo(0, within(1e-12));
    assertThat(ELBOW.direction(10).distance(new Point(0, 1))).isCloseTo(0, within(1e-12));
  }

  @Test
  void anArmEndsAtTheBendSoWhatLiesBeyondIsNotCrossed() {
    assertThat(places(segment(30, -10, 30, 10))).containsExactly(-70.0);
    assertThat(places(segment(90, 20, 110, 20))).containsExactly(20.0);
    assertThat(places(segment(130, -10, 130, 10))).as("beyond the bend").isEmpty();
    assertThat(places(segment(90, -20, 110, -20))).as("below the bend").isEmpty();
    assertThat(places(segment(60, -10, 110, 40))).containsExactlyInAnyOrder(-30.0, 30.0);
  }

  /** At the bend both arms would touch: counted on neither, so that no cut is doubled there. */
  @Test
  void anEdgeThroughTheBendItselfIsNoCrossing() {
    assertThat(places(segment(90, -10, 110, 10))).isEmpty();
  }

  @Test
  void movedItKeepsItsArms() {
    Bent moved = ELBOW.moved(new Point(3, -4));
    assertThat(moved.bend()).isEqualTo(new Point(103, -4));
    assertThat(moved.first()).isEqualTo(ELBOW.first());
    assertThat(moved.second()).isEqualTo(ELBOW.second());
  }

  @Test
  void shiftedItMovesSquareToTheLineBetweenItsArms() {
    Point by = ELBOW.shifted(10).bend().minus(ELBOW.bend());
    assertThat(by.norm()).isCloseTo(10, within(1e-9));
    assertThat(by.dot(new Point(1, 1))).isCloseTo(0, within(1e-9));
    assertThat(ELBOW.shifted(10).shifted(-10).bend().distance(ELBOW.bend()))
        .isCloseTo(0, within(1e-9));
  }

  /** A straight one has no side of its own from its arms' difference alone: left of its way. */
  @Test
  void withBothArmsInOneLineItIsThatLine() {
    Bent line = Bent.through(new Point(0, 0), new Point(50, 0), new Point(90, 0));
    assertThat(line.place(new Point(20, 7))).isCloseTo(-30, within(1e-9));
    assertThat(line.place(new Point(70, 7))).isCloseTo(20, within(1e-9));
    assertThat(line.shifted(5).bend()).isEqualTo(new Point(50, 5));
  }

  /** A cut along it makes two joints and two pieces. */
  @Test
  void aBentCutIsTwoJointsOfOneCut() {
    Draft cut =
        Drafts.of(0, 0, 200, 0, 200, 200, 0, 200)
            .cut(Move.bent(new Point(0, 100), new Point(100, 120), new Point(200, 100)))
            .orElseThrow();
    assertThat(cut.pieces()).hasSize(2);
    assertThat(cut.lines()).extracting(Laid::follows).containsExactly(false, true);
    assertThat(cut.lines().getFirst().end(true)).isEqualTo(new Point(100, 120));
    assertThat(cut.lines().getLast().end(false)).isEqualTo(new Point(100, 120));
    assertThat(cut.moves()).as("one cut when it is made again").hasSize(1);
    assertThat(cut.base().cutAll(cut.moves()).lines()).isEqualTo(cut.lines());
  }

  private static Move dogLeg(Move.Reach reach) {
    return Move.bent(new Point(100, 0), new Point(100, 120), new Point(140, 200)).reaching(reach);
  }

  private static Move across(double y, Move.Reach reach) {
    return Move.between(new Point(0, y), new Point(200, y), reach);
  }

  /** The bend may stand on a joint that is there, or a joint may run through it later. */
  @Test
  void whicheverCutComesFirstABendOnACrossingLeavesFourPieces() {
    Draft slab = Drafts.of(0, 0, 200, 0, 200, 200, 0, 200);
    Move leg = dogLeg(Move.Reach.THROUGH);
    Move row = across(120, Move.Reach.THROUGH);
    for (List<Move> order : List.of(List.of(row, leg), List.of(leg, row))) {
      Draft cut = slab.cutAll(order);
      assertThat(cut.pieces()).hasSize(4);
      assertThat(cut.lines()).hasSize(3);
      assertThat(cut.tally().tees()).isEmpty();
      assertThat(cut.pieces()).allMatch(p -> p.faults().corners().isEmpty());
      assertThat(cut.base().cutAll(cut.moves()).lines()).isEqualTo(cut.lines());
    }
  }

  /** Cut through, the straight arm goes on over joints that the bend is beyond. */
  @Test
  void throughJointsItGoesOnToTheEdge() {
    Draft rows =
        Drafts.of(0, 0, 200, 0, 200, 200, 0, 200)
            .cutAll(List.of(across(120, Move.Reach.THROUGH), across(60, Move.Reach.THROUGH)));
    Draft through = rows.cut(dogLeg(Move.Reach.THROUGH)).orElseThrow();
    assertThat(through.pieces()).hasSize(6);
    assertThat(through.lines().get(2).end(false)).isEqualTo(new Point(100, 0));
    Draft piece = rows.cut(dogLeg(Move.Reach.PIECE)).orElseThrow();
    assertThat(piece.pieces()).hasSize(5);
    assertThat(piece.lines().get(2).end(false)).isEqualTo(new Point(100, 60));
  }
}
