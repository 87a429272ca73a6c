package org.jointwright.check.hold;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jointwright.check.Case;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.jointwright.check.Subject;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.practice.BoxOuts;
import org.jointwright.practice.Isolation;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
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

  @Test
  void theRuleIsOneThatMustHold() {
    assertThat(new IsolationWhereHeld().severity()).isEqualTo(Severity.MUST);
  }

  @Test
  void theEdgesOfAnOpeningAreJudgedToo() {
    Plan plan = Sketch.rectangle(120, 100).opening(40, 40, 80, 40, 80, 60, 40, 60).plan();
    Slab slab = plan.slabs().getFirst();
    Opening opening =
        new Opening(
            slab.openings().getFirst().outline(),
            Map.of(1, EdgeSetting.against(Against.BUILDING)),
            Kept.NOTHING);
    Plan held = plan.withSlabs(List.of(slab.withOpenings(List.of(opening))));
    assertThat(Checks.judge(Layouts.of(held)).findings())
        .filteredOn(f -> f.rule().equals("M7"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo("check.m7.bareBuilding");
              assertThat(f.subject()).isEqualTo(new Subject.OnEdge(java.util.OptionalInt.of(0), 1));
              assertThat(f.measured()).isEqualTo(20);
            });
  }

  @Test
  void eachObjectIsHeldAgainstItsOwnBoxOut() {
    Plan plan = Sketch.rectangle(240, 100).plan();
    List<Joint> filler = new ArrayList<>();
    List<BoxOut> boxOuts = new ArrayList<>();
    List<FixedObject> posts = new ArrayList<>();
    for (double x : new double[] {60, 180}) {
      String id = "post" + (int) x;
      List<Point> corners =
          List.of(new Point(x + 10, 50), new Point(x, 60), new Point(x - 10, 50), new Point(x, 40));
      List<Point> round = new ArrayList<>(corners);
      round.add(corners.getFirst());
      filler.add(Joint.of("J" + id, JointKind.ISOLATION, Path.through(round), Purpose.ISOLATION));
      boxOuts.add(new BoxOut(id, Outline.of(corners), Kept.NOTHING));
      posts.add(
          new FixedObject(
              id,
              "slab",
              FixedKind.POST,
              new FixedShape.Round(new Point(x, 50), Length.inches(8), Kept.NOTHING),
              Kept.NOTHING));
    }
    Plan two =
        plan.withSlabs(List.of(plan.slabs().getFirst().withLaid(filler, boxOuts))).withFixed(posts);
    assertThat(Checks.judge(Layouts.of(two)).findings())
        .filteredOn(f -> f.rule().equals("M7"))
        .isEmpty();
  }

  @Test
  void aBoxOutNeedsNoFillerWhereItEndsAtTheSlabsEdge() {
    Sketch atTheEdge =
        Sketch.rectangle(120, 100)
            .post(60, 8, 8)
            .bareBoxOut(50, 0, 70, 0, 70, 18, 50, 18)
            .filler(70, 0, 70, 18, 50, 18, 50, 0);
    assertThat(atTheEdge.broken("M7")).isEmpty();
  }

  @Test
  void aPostThatOnlyGrazesTheSlabNeedsNoBoxOut() {
    assertThat(Sketch.rectangle(120, 100).post(60, -3.42, 8).broken("M7")).isEmpty();
    assertThat(Sketch.rectangle(120, 100).post(60, -3.3, 8).broken("M7"))
        .containsExactly("check.m7.noBoxOut");
  }

  @Test
  void aGapInTheFillerRoundABoxOutIsForgivenUpToAnInch() {
    // Filler is taken to reach 9/16 in beyond each of its ends.
    assertThat(gap(2).broken("M7")).isEmpty();
    assertThat(gap(3).broken("M7")).containsExactly("check.m7.bareBoxOut");
  }

  private static Sketch gap(double inches) {
    return post()
        .bareBoxOut(50, 40, 70, 40, 70, 60, 50, 60)
        .filler(60 + inches, 40, 70, 40, 70, 60, 50, 60, 50, 40, 60, 40);
  }

  @Test
  void aBoxOutTwoAndAHalfInchesClearIsJustClearEnough() {
    assertThat(post().boxOut(53.5, 43.5, 66.5, 43.5, 66.5, 56.5, 53.5, 56.5).broken("M7"))
        .isEmpty();
  }

  @Test
  void whereFillerIsMissingTheSourceIsThatOfFiller() {
    assertThat(post().bareBoxOut(diamond(4)).findings("M7").getFirst().sources())
        .containsExactly(Isolation.WHERE);
    assertThat(post().boxOut(diamond(2.4)).findings("M7").getFirst().sources())
        .containsExactly(BoxOuts.CLEAR.source());
  }
}
