package org.jointwright.check.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jointwright.check.Sketch;
import org.jointwright.joint.Layouts;
import org.jointwright.plan.JointKind;
import org.junit.jupiter.api.Test;

/** Which joint ends stand across an edge that two slabs share. */
class LineUpsTest {
  private static Sketch slab() {
    return Sketch.rectangle(200, 100);
  }

  /** A neighbour above, over a part of the width. */
  private static Sketch above(double from, double to) {
    return Sketch.polygon(from, 100, to, 100, to, 160, from, 160);
  }

  private static List<LineUps.End> of(Sketch sketch, Sketch above) {
    return Evidence.of(sketch.beside("walk", above)).lineUps();
  }

  @Test
  void anEndOnASharedEdgeKnowsHowFarItMisses() {
    List<LineUps.End> ends =
        of(slab().joint(100, 100, 100, 0), above(0, 200).joint(106, 160, 106, 100));
    assertThat(ends).hasSize(1);
    assertThat(ends.getFirst().nearest()).isCloseTo(6, within(1e-9));
    assertThat(ends.getFirst().other()).isEqualTo("walk");
    assertThat(ends.getFirst().misses()).isTrue();
    assertThat(of(slab().joint(100, 0, 100, 100), above(0, 200).joint(101, 100, 101, 160)))
        .extracting(LineUps.End::misses)
        .containsExactly(false);
  }

  @Test
  void anEndNearTheEndOfWhatIsSharedIsAtACorner() {
    // What is shared reaches 9/16 in past the neighbour’s corner.
    assertThat(of(slab().joint(100.4, 0, 100.4, 100), above(100, 200))).isEmpty();
    assertThat(of(slab().joint(100.5, 0, 100.5, 100), above(100, 200))).hasSize(1);
    assertThat(of(slab().joint(101.2, 0, 101.2, 100), above(100, 200))).hasSize(1);
    assertThat(of(slab().joint(98, 0, 98, 100), above(100, 200))).isEmpty();
  }

  @Test
  void slabsThatTouchForSixInchesShareNothing() {
    assertThat(of(slab().joint(2.5, 0, 2.5, 100), above(-50, 5))).isEmpty();
    assertThat(of(slab().joint(3.5, 0, 3.5, 100), above(-50, 7))).hasSize(1);
  }

  @Test
  void aSharedEdgeInPiecesIsOne() {
    Sketch pieces = Sketch.polygon(0, 0, 200, 0, 200, 100, 100, 100, 0, 100);
    assertThat(of(pieces.joint(100, 0, 100, 100), above(0, 200))).hasSize(1);
    // Pieces of which each alone is too short, and their far ends.
    Sketch short1 = Sketch.polygon(0, 0, 200, 0, 200, 100, 8, 100, 4, 100, 0, 100);
    assertThat(of(short1.joint(4, 0, 4, 100), above(-50, 8))).hasSize(1);
    Sketch short2 = Sketch.polygon(0, 0, 200, 0, 200, 100, 8, 100, 4, 100, 0, 100);
    assertThat(of(short2.joint(7.5, 0, 7.5, 100), above(-50, 8))).isEmpty();
  }

  @Test
  void twoSharedStretchesAreNotOne() {
    // A gap of 40 between: the ends of both stretches are corners.
    Sketch notched =
        Sketch.polygon(0, 0, 200, 0, 200, 100, 120, 100, 120, 80, 80, 80, 80, 100, 0, 100);
    assertThat(of(notched.joint(79.5, 0, 79.5, 100).joint(40, 0, 40, 100), above(0, 200)))
        .extracting(e -> e.at().x())
        .containsExactly(40.0);
  }

  @Test
  void twoShortStretchesDoNotAddUp() {
    Sketch legs = Sketch.polygon(0, 0, 200, 0, 200, 100, 196, 100, 196, 80, 4, 80, 4, 100, 0, 100);
    assertThat(of(legs.joint(2, 0, 2, 100), above(0, 200))).isEmpty();
  }

  @Test
  void aStretchWithFillerIsNotShared() {
    Sketch part = slab().filler(0, 100, 120, 100);
    assertThat(of(part.joint(60, 0, 60, 100).joint(160, 0, 160, 100), above(0, 200)))
        .extracting(e -> e.at().x())
        .containsExactly(160.0);
  }

  @Test
  void jointsAlongTheEdgeFillerAndWhatClosesRunInNoSlab() {
    assertThat(of(slab().joint(JointKind.CONSTRUCTION, 50, 100, 150, 100), above(0, 200)))
        .isEmpty();
    assertThat(of(slab().filler(100, 0, 100, 100), above(0, 200))).isEmpty();
    assertThat(of(slab().joint(100, 100, 80, 80, 100, 60, 120, 80, 100, 100), above(0, 200)))
        .isEmpty();
    assertThat(of(slab().joint(JointKind.CONSTRUCTION, 100, 0, 100, 100), above(0, 200)))
        .hasSize(1);
  }

  @Test
  void onATieTheFirstSlabIsLookedAt() {
    Sketch both = slab().joint(90, 0, 90, 100);
    Judged first = Evidence.of(both.beside("walk", above(0, 200).joint(110, 100, 110, 160)));
    assertThat(first.lineUps()).hasSize(1);
    Judged second =
        new Judged(
            first.plan(), Layouts.of(first.plan()), Layouts.of(first.plan()).slabs().getLast());
    assertThat(second.lineUps()).isEmpty();
  }
}
