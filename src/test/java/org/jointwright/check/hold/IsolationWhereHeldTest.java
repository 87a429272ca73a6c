package org.jointwright.check.hold;

import static org.assertj.core.api.Assertions.assertThat;

import org.jointwright.check.Case;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.jointwright.check.Subject;
import org.jointwright.plan.Against;
import org.junit.jupiter.api.Test;

/** M7 by NRMCA Concrete in Practice 6; the clearances of box-outs are common practice. */
class IsolationWhereHeldTest {
  private static Sketch atTheHouse() {
    return Sketch.rectangle(120, 100).edge(0, Against.BUILDING);
  }

  @Case(Case.Kind.PASSES)
  @Test
  void fillerAlongTheWholeWallPasses() {
    assertThat(atTheHouse().filler(0, 0, 120, 0).broken("M7")).isEmpty();
  }

  @Case(Case.Kind.BREAKS)
  @Test
  void aWallWithoutFillerGivesOneFindingOnThatEdge() {
    assertThat(atTheHouse().findings("M7"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.m7.bareBuilding");
              assertThat(f.measured()).isEqualTo(120);
              assertThat(f.subject())
                  .isEqualTo(new Subject.OnEdge(java.util.OptionalInt.empty(), 0));
            });
  }

  @Case(Case.Kind.JUST_INSIDE)
  @Test
  void fillerThatStopsAnInchAndAHalfShortIsForgiven() {
    assertThat(atTheHouse().filler(0, 0, 118.5, 0).broken("M7")).isEmpty();
  }

  @Case(Case.Kind.JUST_OUTSIDE)
  @Test
  void fillerThatStopsFartherShortIsNot() {
    assertThat(atTheHouse().filler(0, 0, 118.3, 0).broken("M7"))
        .containsExactly("check.m7.bareBuilding");
  }

  @Test
  void concreteAndTheStreetNeedFillerOpenGroundAndAsphaltDoNot() {
    Sketch all =
        Sketch.rectangle(120, 100)
            .edge(0, Against.CONCRETE)
            .edge(1, Against.STREET)
            .edge(2, Against.ASPHALT)
            .edge(3, Against.OPEN);
    assertThat(all.broken("M7")).containsExactly("check.m7.bareConcrete", "check.m7.bareStreet");
  }

  @Test
  void whereTheSlabFloatsThereIsOnlyANote() {
    assertThat(Sketch.rectangle(120, 100).floats(0, Against.BUILDING).findings("M7"))
        .extracting(Finding::severity, Finding::key)
        .containsExactly(org.assertj.core.groups.Tuple.tuple(Severity.NOTE, "check.m7.floats"));
  }

  /** A post of 8 in with a turned square round it, its sides that clear of the post. */
  private static double[] diamond(double clear) {
    double r = (4 + clear) * Math.sqrt(2);
    return new double[] {60 + r, 50, 60, 50 + r, 60 - r, 50, 60, 50 - r};
  }

  private static Sketch post() {
    return Sketch.rectangle(120, 100).post(60, 50, 8);
  }

  @Test
  void aBoxOutThreeInchesClearWithFillerPasses() {
    assertThat(post().boxOut(diamond(3)).broken("M7")).isEmpty();
  }

  @Test
  void aBoxOutNearerThanTwoAndAHalfInchesBreaks() {
    assertThat(post().boxOut(diamond(2.55)).broken("M7")).isEmpty();
    assertThat(post().boxOut(diamond(2.45)).broken("M7")).containsExactly("check.m7.tooClose");
  }

  @Test
  void aBoxOutThatReachesMoreThanThreeFeetBreaks() {
    double near = 4 + 36.4;
    double far = 4 + 36.7;
    assertThat(
            post().boxOut(60 - near, 30, 60 + near, 30, 60 + near, 70, 60 - near, 70).broken("M7"))
        .containsExactly("check.m7.tooFar");
    assertThat(post().boxOut(60 - far, 42, 60, 30, 60 + far, 42, 60, 60).broken("M7"))
        .contains("check.m7.tooFar");
    assertThat(post().boxOut(60 - near, 50, 60, 30, 60 + near, 50, 60, 70).broken("M7")).isEmpty();
  }

  @Test
  void aBoxOutThatComesBackOntoTheSlabFarOffBreaks() {
    // Between its corners its sides run across a gap in the slab; beyond that they are on it again.
    assertThat(gapped().boxOut(30, 42, 18, 30, 30, 18, 130, 30).broken("M7"))
        .contains("check.m7.tooFar");
    assertThat(gapped().boxOut(30, 42, 18, 30, 30, 18, 90, 30).broken("M7"))
        .doesNotContain("check.m7.tooFar");
  }

  private static Sketch gapped() {
    return Sketch.polygon(0, 0, 120, 0, 120, 100, 100, 100, 100, 20, 60, 20, 60, 100, 0, 100)
        .post(30, 30, 8);
  }

  @Test
  void aBoxOutWithoutFillerBreaks() {
    assertThat(post().bareBoxOut(diamond(4)).broken("M7")).containsExactly("check.m7.bareBoxOut");
  }

  @Test
  void aPostWithoutABoxOutBreaks() {
    assertThat(post().broken("M7")).containsExactly("check.m7.noBoxOut");
  }

  @Test
  void aBoxOutBesideThePostBreaks() {
    assertThat(post().boxOut(80, 40, 100, 40, 100, 60, 80, 60).broken("M7"))
        .contains("check.m7.uncovered");
  }

  @Test
  void aPostBesideTheSlabNeedsNothing() {
    assertThat(Sketch.rectangle(120, 100).post(200, 50, 8).broken("M7")).isEmpty();
  }
}
