package org.jointwright.check.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.junit.jupiter.api.Test;

/** S7 by the ACPA wiki: joints match those of the slab beside, within 1 in. */
class MissedNeighboursTest {
  private static Sketch pair(double theirs) {
    return Sketch.rectangle(200, 100)
        .joint(100, 0, 100, 100)
        .beside(
            "walk",
            Sketch.polygon(0, 100, 200, 100, 200, 160, 0, 160).joint(theirs, 100, theirs, 160));
  }

  @Case(Case.Kind.PASSES)
  @Test
  void jointsThatMeetPass() {
    assertThat(pair(100).findings("S7")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aJointThatMissesIsFound() {
    assertThat(pair(110).findings("S7"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.s7.missed");
              assertThat(f.severity()).isEqualTo(Severity.SHOULD);
              assertThat(f.slab()).isEqualTo("slab");
              assertThat(f.joint()).contains("J1");
              assertThat(f.measured()).isEqualTo(10);
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void anInchAsidePasses() {
    assertThat(pair(101).findings("S7")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void moreThanAnInchMisses() {
    assertThat(pair(101.05).findings("S7")).hasSize(1);
  }

  @Test
  void aNeighbourWithoutJointsThereHasNothingToMeet() {
    Sketch bare =
        Sketch.rectangle(200, 100)
            .joint(100, 0, 100, 100)
            .beside("walk", Sketch.polygon(0, 100, 200, 100, 200, 160, 0, 160));
    assertThat(bare.findings("S7")).extracting(Finding::key).containsExactly("check.s7.none");
  }

  @Test
  void fillerBetweenThemParts() {
    assertThat(pair(110).filler(0, 100, 200, 100).findings("S7")).isEmpty();
  }

  @Test
  void theSlabWithFewerJointsIsToMeet() {
    Sketch s =
        Sketch.rectangle(200, 100)
            .joint(60, 0, 60, 100)
            .joint(140, 0, 140, 100)
            .beside(
                "walk",
                Sketch.polygon(0, 100, 200, 100, 200, 160, 0, 160).joint(100, 100, 100, 160));
    assertThat(s.findings("S7"))
        .singleElement()
        .satisfies(f -> assertThat(f.slab()).isEqualTo("walk"));
  }
}
