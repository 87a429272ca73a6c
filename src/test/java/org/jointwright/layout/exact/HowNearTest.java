package org.jointwright.layout.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jointwright.check.figure.Figures;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Jointing;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Small slabs with square corners: the engine's layouts beside the cheapest of their family. */
class HowNearTest {
  /** Corners in feet, as the edges of the slab turn. */
  private static final Map<String, double[]> SHAPES =
      Map.ofEntries(
          Map.entry("square", new double[] {0, 0, 9, 0, 9, 9, 0, 9}),
          Map.entry("drive", new double[] {0, 0, 20, 0, 20, 40, 0, 40}),
          Map.entry("lane", new double[] {0, 0, 11, 0, 11, 57, 0, 57}),
          Map.entry("walk", new double[] {0, 0, 4, 0, 4, 31, 0, 31}),
          Map.entry("L", new double[] {0, 0, 18, 0, 18, 9, 8, 9, 8, 20, 0, 20}),
          Map.entry("bend", new double[] {0, 0, 14, 0, 14, 4, 4, 4, 4, 13, 0, 13}),
          Map.entry("T", new double[] {6, 0, 12, 0, 12, 10, 18, 10, 18, 16, 0, 16, 0, 10, 6, 10}),
          Map.entry("U", new double[] {0, 0, 24, 0, 24, 16, 17, 16, 17, 8, 8, 8, 8, 16, 0, 16}),
          Map.entry("Z", new double[] {0, 0, 12, 0, 12, 8, 20, 8, 20, 16, 7, 16, 7, 9, 0, 9}),
          Map.entry("steps", new double[] {0, 0, 15, 0, 15, 5, 10, 5, 10, 10, 5, 10, 5, 15, 0, 15}),
          Map.entry(
              "plus",
              new double[] {
                8, 0, 16, 0, 16, 8, 24, 8, 24, 16, 16, 16, 16, 24, 8, 24, 8, 16, 0, 16, 0, 8, 8, 8
              }));

  private static Stream<String> shapes() {
    return SHAPES.keySet().stream().sorted();
  }

  private static Plan plan(String shape, double turn) {
    double[] feet = SHAPES.get(shape);
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < feet.length; i += 2) {
      corners.add(new Point(feet[i] * 12, feet[i + 1] * 12).turned(turn));
    }
    return Plan.EMPTY.withSlabs(List.of(Slab.of("slab", Outline.of(corners))));
  }

  private static Nearness near(Layout layout) {
    double cost = Figures.of(layout).cost();
    return HowNear.of(layout.plan(), layout.slabs().getFirst(), cost, true, () -> true);
  }

  private static Nearness near(Slab slab) {
    return near(Layouts.of(Plan.EMPTY.withSlabs(List.of(slab))));
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void engineIsWithinAHundredthOfTheCheapest(String shape) {
    Nearness near = near(LayoutEngine.lay(plan(shape, 0)));
    if (near instanceof Nearness.AtMost most) {
      assertThat(most.share()).as(shape).isLessThan(0.01);
    } else {
      assertThat(near).as(shape).isInstanceOf(Nearness.Least.class);
    }
  }

  @Test
  void slabMayStandAtAnyAngle() {
    assertThat(near(LayoutEngine.lay(plan("L", 0.4)))).isInstanceOf(Nearness.Least.class);
  }

  /** 20 x 40 ft, 4 in: 100 ft divide it into eight squares; one more rib of 20 ft is too much. */
  @Test
  void needlessJointIsSeen() {
    List<Joint> joints = new ArrayList<>();
    joints.add(joint(10, 0, 10, 40));
    for (int k = 1; k < 5; k++) {
      joints.add(joint(0, 8 * k, 20, 8 * k));
    }
    Slab slab = plan("drive", 0).slabs().getFirst().withLaid(joints, List.of());
    assertThat(near(slab))
        .isInstanceOfSatisfying(
            Nearness.AtMost.class,
            n -> {
              assertThat(n.share()).isCloseTo(20 / 120.0, within(0.002));
              assertThat(n.known()).isCloseTo(20 / 120.0, within(0.002));
            });
  }

  /** The same joint held by the user is no waste. */
  @Test
  void whatIsLockedIsGranted() {
    List<Joint> joints = new ArrayList<>();
    joints.add(joint(10, 0, 10, 40));
    for (int k = 1; k < 5; k++) {
      joints.add(joint(0, 8 * k, 20, 8 * k).withLocked(true));
    }
    Slab slab = plan("drive", 0).slabs().getFirst().withLaid(joints, List.of());
    assertThat(near(slab)).isInstanceOf(Nearness.Least.class);
  }

  private static Joint joint(double fromX, double fromY, double toX, double toY) {
    Path path = Path.straight(new Point(fromX * 12, fromY * 12), new Point(toX * 12, toY * 12));
    return Joint.of("J" + fromX + "," + fromY, JointKind.CONTRACTION, path, Purpose.SPACING);
  }

  @Test
  void whereNoLayoutMeetsTheRulesThatIsSaid() {
    Slab square = plan("drive", 0).slabs().getFirst();
    // Panels of at most a foot cannot be two wide.
    Jointing narrow = Jointing.DEFAULT.withMaxSpacing(Length.feet(1));
    Layout layout = Layouts.of(Plan.EMPTY.withSlabs(List.of(square.withJointing(narrow))));
    assertThat(HowNear.of(layout.plan(), layout.slabs().getFirst(), 0, false, () -> true))
        .isInstanceOf(Nearness.NoneMeets.class);
  }

  @Test
  void brokenLayoutIsNotCompared() {
    Slab drive = plan("drive", 0).slabs().getFirst();
    Layout layout = Layouts.of(Plan.EMPTY.withSlabs(List.of(drive)));
    assertThat(HowNear.of(layout.plan(), layout.slabs().getFirst(), 0, false, () -> true))
        .isEqualTo(new Nearness.Unproved(Nearness.Why.BROKEN));
  }

  @Test
  void oneThatIsToldToStopSaysSo() {
    Layout layout = LayoutEngine.lay(plan("drive", 0));
    assertThat(HowNear.of(layout.plan(), layout.slabs().getFirst(), 100, true, () -> false))
        .isEqualTo(new Nearness.Unproved(Nearness.Why.TRIES));
  }

  @Test
  void slantsArcsAndJogsAreNotOfTheFamily() {
    assertThat(near(slab(0, 0, 10, 0, 12, 10, 0, 10))).isEqualTo(unproved(Nearness.Why.SLANTED));
    assertThat(near(slab(0, 0, 9, 0, 9, 5, 8.95, 5, 8.95, 9, 0, 9)))
        .isEqualTo(unproved(Nearness.Why.JOGS));
    List<Vertex> bowed = new ArrayList<>(plan("square", 0).slabs().getFirst().outline().vertices());
    bowed.set(0, Vertex.arc(new Point(0, 0), new Point(54, -8)));
    assertThat(near(Slab.of("slab", new Outline(bowed)))).isEqualTo(unproved(Nearness.Why.ARCS));
  }

  private static Nearness unproved(Nearness.Why why) {
    return new Nearness.Unproved(why);
  }

  private static Slab slab(double... feet) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < feet.length; i += 2) {
      corners.add(new Point(feet[i] * 12, feet[i + 1] * 12));
    }
    return Slab.of("slab", Outline.of(corners));
  }
}
