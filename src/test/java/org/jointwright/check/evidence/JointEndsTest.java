package org.jointwright.check.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.check.Sketch;
import org.jointwright.joint.Source;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class JointEndsTest {
  private static Sketch slab() {
    return Sketch.rectangle(200, 100);
  }

  private static List<JointEnds.End> of(Sketch sketch) {
    return JointEnds.of(Evidence.of(sketch));
  }

  @Test
  void anEndKnowsItsEdgeAndHowFarAlongItStands() {
    List<JointEnds.End> ends = of(slab().joint(50, 0.5, 60, 100));
    assertThat(ends).extracting(JointEnds.End::last).containsExactly(false, true);
    assertThat(ends)
        .extracting(JointEnds.End::source)
        .containsExactly(new Source.OnOutline(0), new Source.OnOutline(2));
    assertThat(ends.getFirst().at()).isEqualTo(new Point(50, 0));
    assertThat(ends.getFirst().along()).isCloseTo(0.25, within(1e-12));
    assertThat(ends.getLast().along()).isCloseTo(0.7, within(1e-12));
  }

  @Test
  void howFarItIsOffSquareIsMeasuredAtItsOwnEnd() {
    double aside = 100 * Math.tan(Math.toRadians(12));
    assertThat(of(slab().joint(50, 0, 50 + aside, 100)))
        .allMatch(e -> Math.abs(e.offSquare() - 12) < 1e-9);
    assertThat(of(slab().joint(50, 0, 50, 100))).allMatch(e -> e.offSquare() == 0);
  }

  @Test
  void endsOnNothingOnJointsAndOfOtherKindsAreNone() {
    assertThat(of(slab().joint(50, 0.6, 50, 99.3))).isEmpty();
    assertThat(of(slab().joint(JointKind.CONSTRUCTION, 50, 0, 50, 100))).isEmpty();
    assertThat(of(slab().filler(50, 0, 50, 100))).isEmpty();
    assertThat(of(slab().joint(50, 0, 50, 100).joint(50, 50, 200, 50))).hasSize(3);
    assertThat(of(Sketch.polygon(0, 0, 100, 0, 50, 100).cornerJoint(44, 88, 56, 88))).isEmpty();
  }

  @Test
  void anEndWithinHalfAnInchOfACornerIsAtIt() {
    assertThat(of(slab().joint(0.4, 0, 60, 100)))
        .extracting(JointEnds.End::atCorner)
        .containsExactly(true, false);
    assertThat(of(slab().joint(0.6, 0, 60, 100)))
        .extracting(JointEnds.End::atCorner)
        .containsExactly(false, false);
  }

  @Test
  void aPlaceWhereAnEdgeHardlyTurnsIsNoCorner() {
    double bend = 100 * Math.tan(Math.toRadians(4));
    Sketch flat = Sketch.polygon(0, 0, 100, 0, 200, bend, 200, 100, 0, 100);
    assertThat(of(flat.joint(100, 0, 100, 100)).getFirst().atCorner()).isFalse();
    bend = 100 * Math.tan(Math.toRadians(6));
    Sketch bent = Sketch.polygon(0, 0, 100, 0, 200, bend, 200, 100, 0, 100);
    assertThat(of(bent.joint(100, 0, 100, 100)).getFirst().atCorner()).isTrue();
  }

  @Test
  void openingsAndBoxOutsAreEdgesToo() {
    Sketch open =
        slab()
            .opening(80, 40, 120, 40, 120, 60, 80, 60)
            .joint(100, 0, 100, 40)
            .joint(100, 60, 100, 100);
    assertThat(of(open))
        .extracting(JointEnds.End::source)
        .containsExactly(
            new Source.OnOutline(0),
            new Source.OnOpening(0, 0),
            new Source.OnOpening(0, 2),
            new Source.OnOutline(2));
    Sketch boxed =
        slab().post(100, 50, 8).boxOut(88, 38, 112, 38, 112, 62, 88, 62).joint(100, 0, 100, 38);
    assertThat(of(boxed)).extracting(JointEnds.End::onBoxOut).containsExactly(false, true);
  }

  @Test
  void atAnArcItIsMeasuredFromTheRadius() {
    Sketch bowed =
        Sketch.of(
            Vertex.at(new Point(0, 0)),
            Vertex.at(new Point(200, 0)),
            Vertex.arc(new Point(200, 100), new Point(100, 130)),
            Vertex.at(new Point(0, 100)));
    assertThat(of(bowed.joint(100, 0, 100, 130)).getLast().offSquare()).isCloseTo(0, within(1e-6));
  }
}
