package org.jointwright.plan.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class RoundingTest {
  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  private static final Plan PLAN =
      Plan.EMPTY.withSlabs(
          List.of(
              Slab.of(
                      "drive",
                      Outline.of(
                          List.of(
                              p(0, 0),
                              p(240, 0),
                              p(240, 200),
                              p(120, 200),
                              p(120, 360),
                              p(0, 360))))
                  .withEdges(
                      Map.of(
                          2,
                          EdgeSetting.against(Against.BUILDING)
                              .withFeatures(List.of(Feature.of(FeatureKind.DOOR, 50, 90)))))));

  private static Slab drive(Plan plan) {
    return plan.slabs().getFirst();
  }

  private static Plan rounded(int corner, double radius) {
    return new SlabEdit.RoundCorner(Ref.outline("drive", corner), radius).applyTo(PLAN);
  }

  @Test
  void anOutsideCornerLosesWhatTheBookSays() {
    Plan round = rounded(1, 36);
    double lost = 36 * 36 * (1 - Math.PI / 4);
    assertThat(drive(PLAN).outline().ring().area() - drive(round).outline().ring().area())
        .isCloseTo(lost, within(1e-6));
    Arc arc = (Arc) drive(round).outline().ring().edges().get(1);
    assertThat(arc.radius()).isCloseTo(36, within(1e-9));
    assertThat(arc.start()).isEqualTo(p(204, 0));
    assertThat(arc.end()).isEqualTo(p(240, 36));
  }

  @Test
  void anInsideCornerGainsAsMuch() {
    double gained = 36 * 36 * (1 - Math.PI / 4);
    assertThat(drive(rounded(3, 36)).outline().ring().area())
        .isCloseTo(drive(PLAN).outline().ring().area() + gained, within(1e-6));
  }

  @Test
  void aDoorStaysAtTheSamePlaceOfTheHouse() {
    Plan round = rounded(2, 24);
    assertThat(drive(round).edge(3).against()).isEqualTo(Against.BUILDING);
    Edge edge = drive(round).outline().ring().edges().get(3);
    Feature door = drive(round).edge(3).features().getFirst();
    assertThat(edge.start().minus(p(door.from(), 0))).isEqualTo(p(240 - 50, 200));
    assertThat(drive(round).edge(2)).as("the arc is against nothing").isEqualTo(EdgeSetting.OPEN);
  }

  @Test
  void roundedAndMadeSharpAgainIsAsItWas() {
    for (int corner = 0; corner < 6; corner++) {
      Plan round = rounded(corner, 20);
      Plan sharp = new SlabEdit.SharpenCorner(Ref.outline("drive", corner)).applyTo(round);
      List<Point> before = drive(PLAN).outline().ring().vertices();
      List<Point> after = drive(sharp).outline().ring().vertices();
      assertThat(after).hasSameSizeAs(before);
      for (int i = 0; i < before.size(); i++) {
        assertThat(after.get(i).distance(before.get(i))).as("corner %d", corner).isLessThan(1e-9);
      }
      Feature door = drive(sharp).edge(2).features().getFirst();
      assertThat(door.from()).isCloseTo(50, within(1e-9));
      assertThat(door.to()).isCloseTo(90, within(1e-9));
    }
  }

  @Test
  void thereIsRoomUpToTheShorterSideAndNoMore() {
    double most = Rounding.most(drive(PLAN).outline(), 3).orElseThrow();
    assertThat(most).isCloseTo(119.5, within(1e-9));
    assertThat(drive(rounded(3, most)).outline().ring().signedArea()).isPositive();
    assertThatThrownBy(() -> rounded(3, most + 0.1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> rounded(3, 0)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void onlyStraightSidesThatTurnHaveACornerToRound() {
    Plan bent =
        new SlabEdit.BendEdge(Ref.outline("drive", 0), Optional.of(p(120, -30))).applyTo(PLAN);
    assertThat(Rounding.most(drive(bent).outline(), 1)).isEmpty();
    assertThat(Rounding.sharp(drive(bent).outline(), 0)).as("it turns at both ends").isEmpty();
    Plan straight =
        new SlabEdit.AddCorner(Ref.outline("drive", 0), org.jointwright.plan.Vertex.at(p(100, 0)))
            .applyTo(PLAN);
    assertThat(Rounding.most(drive(straight).outline(), 1)).isEmpty();
  }

  @Test
  void aCornerPutOnABowLeavesBothPartsBowed() {
    Plan bent =
        new SlabEdit.BendEdge(Ref.outline("drive", 0), Optional.of(p(120, -30))).applyTo(PLAN);
    Edge bow = drive(bent).outline().ring().edges().getFirst();
    Plan split =
        new SlabEdit.AddCorner(Ref.outline("drive", 0), org.jointwright.plan.Vertex.at(bow.at(0.3)))
            .applyTo(bent);
    assertThat(drive(split).outline().ring().area())
        .isCloseTo(drive(bent).outline().ring().area(), within(1e-6));
    assertThat(drive(split).outline().vertices()).hasSize(7);
  }
}
