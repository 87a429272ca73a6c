package org.jointwright.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.check.Sketch;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** Where a pour can stop: on lines that run whole from edge to edge. */
class PanelLinesTest {
  @Test
  void aJointFromEdgeToEdgeIsAWholeLine() {
    List<PanelLines.Whole> lines = of(slab().joint(100, 0, 100, 120));
    assertThat(lines).hasSize(1);
    assertThat(lines.getFirst().joints()).containsExactly("J1");
    assertThat(lines.getFirst().length()).isCloseTo(120, within(1e-9));
  }

  @Test
  void aJointThatEndsAtAnotherOrInTheAirIsNone() {
    assertThat(ids(slab().joint(100, 0, 100, 60).joint(0, 60, 240, 60))).containsExactly("J2");
    assertThat(ids(slab().joint(100, 60, 100, 120).joint(0, 60, 240, 60))).containsExactly("J2");
    assertThat(ids(slab().joint(100, 0, 100, 60))).isEmpty();
    assertThat(ids(slab().joint(100, 120, 100, 60))).isEmpty();
  }

  @Test
  void endsWithinHalfAnInchAndASixteenthAreOnTheEdge() {
    assertThat(ids(slab().joint(100, 0.5625, 100, 119.4375))).containsExactly("J1");
    assertThat(ids(slab().joint(100, 0.6, 100, 120))).isEmpty();
    assertThat(ids(slab().joint(100, 0, 100, 119.4))).isEmpty();
  }

  @Test
  void aLineEndsAtAFormedJointAndAtFiller() {
    assertThat(ids(slab().joint(100, 0, 100, 60).joint(JointKind.CONSTRUCTION, 0, 60, 240, 60)))
        .containsExactly("J1");
    assertThat(ids(slab().joint(100, 0, 100, 60).filler(0, 60, 240, 60))).containsExactly("J1");
    assertThat(ids(slab().joint(100, 0, 100, 59.4375).filler(0, 60, 240, 60)))
        .containsExactly("J1");
    assertThat(ids(slab().joint(100, 0, 100, 59.4).filler(0, 60, 240, 60))).isEmpty();
    assertThat(ids(slab().filler(0, 60, 240, 60))).isEmpty();
  }

  @Test
  void lockedJointsAndCutTipsAreInNone() {
    assertThat(ids(slab().joint(100, 0, 100, 120).locked())).isEmpty();
    assertThat(ids(slab().cornerJoint(100, 0, 100, 120))).isEmpty();
    assertThat(ids(slab().joint(100, 0, 100, 60).joint(100, 60, 100, 120).locked())).isEmpty();
  }

  @Test
  void jointsGoOnWhicheverWayRoundTheyWereDrawn() {
    for (boolean lowerUp : new boolean[] {true, false}) {
      for (boolean middleUp : new boolean[] {true, false}) {
        for (boolean upperUp : new boolean[] {true, false}) {
          Sketch slab = slab();
          piece(slab, 80, 120, upperUp);
          piece(slab, 0, 40, lowerUp);
          piece(slab, 40, 80, middleUp);
          List<PanelLines.Whole> lines = of(slab.joint(180, 0, 180, 120));
          assertThat(lines)
              .extracting(PanelLines.Whole::joints)
              .containsExactly(List.of("J1", "J2", "J3"), List.of("J4"));
          assertThat(lines.getFirst().length()).isCloseTo(120, within(1e-9));
        }
      }
    }
  }

  private static void piece(Sketch slab, double from, double to, boolean up) {
    slab.joint(100, up ? from : to, 100, up ? to : from);
  }

  @Test
  void aLineMayBreakSidewaysByAnInch() {
    assertThat(ids(slab().joint(100, 0, 100, 60).joint(101, 60, 101, 120)))
        .containsExactly("J1 J2");
    assertThat(ids(slab().joint(100, 0, 100, 60).joint(101.1, 60, 101.1, 120))).isEmpty();
  }

  @Test
  void aLineMayBendByTenDegreesWhereItGoesOn() {
    // tan 9 degrees by 60 is 9.5, tan 11 degrees 11.66.
    assertThat(ids(slab().joint(100, 0, 100, 60).joint(100, 60, 109.5, 120)))
        .containsExactly("J1 J2");
    assertThat(ids(slab().joint(100, 0, 100, 60).joint(100, 60, 111.7, 120))).isEmpty();
  }

  @Test
  void aLineGoesNeitherRoundACornerNorBack() {
    assertThat(ids(slab().joint(100, 0, 100, 60).joint(100, 60, 240, 60))).isEmpty();
    // A hairpin: both come from the lower edge to one place.
    assertThat(ids(slab().joint(100, 0, 100, 60).joint(100.5, 60, 100.5, 0))).isEmpty();
  }

  @Test
  void ofTwoThatGoOnTheNearerIsTheLine() {
    Sketch nearerFirst =
        slab().joint(100, 0, 100, 60).joint(100, 60, 100, 120).joint(100.8, 60, 100.8, 90);
    assertThat(ids(nearerFirst)).containsExactly("J1 J2");
    Sketch nearerLast =
        slab().joint(100, 0, 100, 60).joint(100.8, 60, 100.8, 90).joint(100, 60, 100, 120);
    assertThat(ids(nearerLast)).containsExactly("J1 J3");
  }

  @Test
  void anArcGoesOnAlongItsTangent() {
    // A quarter round of 60 from the lower edge, level at its end, and the line that goes on there.
    Sketch goesOn = slab().add(arc("A", 60, 60)).joint(120, 60, 240, 60);
    assertThat(ids(goesOn)).containsExactly("A J2");
    assertThat(ids(slab().add(arc("A", 60, 60)).joint(120, 60, 120, 120))).isEmpty();
  }

  /** From the lower edge at x up and round to the right, level at its end. */
  private static Joint arc(String id, double x, double radius) {
    double s = radius * Math.sqrt(0.5);
    return Joint.of(
        id,
        JointKind.CONTRACTION,
        Path.of(
            Arc.through(
                new Point(x, 0), new Point(x + radius - s, s), new Point(x + radius, radius))),
        Purpose.SPACING);
  }

  @Test
  void aJointThatClosesIsWholeAndNoPartOfAnother() {
    Sketch slab = slab().joint(100, 0, 100, 40).joint(100, 40, 100, 80, 140, 80, 140, 40, 100, 40);
    assertThat(ids(slab)).containsExactly("J2");
  }

  @Test
  void aLineRunsOnOverAnOpening() {
    assertThat(ids(overOpening(120, 120, 40, 80))).containsExactly("J1 J2");
    assertThat(ids(overOpening(120, 122, 40, 80))).containsExactly("J1 J2");
    assertThat(ids(overOpening(122, 120, 40, 80))).containsExactly("J1 J2");
    assertThat(ids(overOpening(120, 120, 39.4375, 80.5625))).containsExactly("J1 J2");
  }

  @Test
  void farBesideItIsAnotherLineThatEndsAtTheOpening() {
    assertThat(ids(overOpening(120, 122.1, 40, 80))).containsExactly("J1", "J2");
    assertThat(ids(overOpening(120, 117.9, 40, 80))).containsExactly("J1", "J2");
  }

  @Test
  void aLineThatStopsShortOfAnOpeningDoesNotRunOverIt() {
    assertThat(ids(overOpening(120, 120, 30, 80))).containsExactly("J2");
    assertThat(ids(overOpening(120, 120, 40, 90))).containsExactly("J1");
    assertThat(ids(overOpening(120, 120, 39.4, 80))).containsExactly("J2");
    assertThat(ids(overOpening(120, 120, 40, 80.6))).containsExactly("J1");
  }

  /** Two joints towards an opening from below and from above. */
  private static Sketch overOpening(double below, double above, double to, double from) {
    return slab()
        .opening(100, 40, 140, 40, 140, 80, 100, 80)
        .joint(below, 0, below, to)
        .joint(above, from, above, 120);
  }

  @Test
  void concreteBetweenTwoOpeningsPartsTheLine() {
    Sketch two =
        slab()
            .opening(100, 20, 140, 20, 140, 30, 100, 30)
            .opening(100, 90, 140, 90, 140, 100, 100, 100)
            .joint(120, 0, 120, 20)
            .joint(120, 100, 120, 120);
    assertThat(ids(two)).containsExactly("J1", "J2");
  }

  @Test
  void aNotchInTheEdgeIsNoOpeningToRunOver() {
    Sketch notched =
        Sketch.polygon(0, 0, 240, 0, 240, 120, 140, 120, 140, 80, 100, 80, 100, 120, 0, 120)
            .joint(0, 100, 100, 100)
            .joint(140, 100, 240, 100);
    assertThat(ids(notched)).containsExactly("J1", "J2");
  }

  @Test
  void aLineRunsOnOverABoxOut() {
    Sketch boxed =
        slab()
            .post(120, 60, 8)
            .bareBoxOut(108, 48, 132, 48, 132, 72, 108, 72)
            .joint(120, 0, 120, 48)
            .joint(120, 72, 120, 120);
    assertThat(ids(boxed)).containsExactly("J1 J2");
  }

  private static Sketch slab() {
    return Sketch.rectangle(240, 120);
  }

  private static List<PanelLines.Whole> of(Sketch sketch) {
    return PanelLines.of(Layouts.of(sketch.plan()).slabs().getFirst());
  }

  private static List<String> ids(Sketch sketch) {
    return of(sketch).stream().map(w -> String.join(" ", w.joints())).toList();
  }
}
