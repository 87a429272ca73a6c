package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.Severity;
import org.jointwright.check.judge.Checks;
import org.jointwright.designer.state.JointSlide;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.Panel;
import org.jointwright.joint.SlabLayout;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Jointing;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Plans of a dozen kinds that no layout can meet. What is laid is least broken in a sense that can
 * be tried: no joint left out, and none moved a little to either side, leaves less excess. And a
 * finding says why it cannot be helped, with what it is about.
 */
class LeastBrokenTest {
  /** The rules that go before all others; whatever breaks one of them more is no better layout. */
  private static final Set<String> FIRST = Set.of("M6", "M7", "M8", "M9", "M10");

  /** How far joints are moved in turn, inches. */
  private static final double[] SHIFTS = {-12, -6, -2, 2, 6, 12};

  /** Less excess than this is none, as a share. */
  private static final double EQUAL = 1e-3;

  /**
   * A plan that cannot be met.
   *
   * @param key what is said of it
   */
  private record Helpless(String name, Slab slab, String key) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static Outline box(double left, double low, double right, double high) {
    return Outline.of(
        List.of(
            new Point(12 * left, 12 * low),
            new Point(12 * right, 12 * low),
            new Point(12 * right, 12 * high),
            new Point(12 * left, 12 * high)));
  }

  private static Slab pad(double wide, double high) {
    return Slab.of("pad", box(0, 0, wide, high));
  }

  private static KeepClear zone(double left, double low, double right, double high) {
    return KeepClear.of("", box(left, low, right, high));
  }

  private static Slab with(Slab slab, KeepClear... zones) {
    return slab.withKeepClear(List.of(zones));
  }

  private static Slab locking(Slab slab, double[]... lines) {
    List<Joint> joints = new ArrayList<>();
    for (double[] l : lines) {
      Path path = Path.straight(new Point(12 * l[0], 12 * l[1]), new Point(12 * l[2], 12 * l[3]));
      joints.add(
          Joint.of("L" + joints.size(), JointKind.CONTRACTION, path, Purpose.SPACING)
              .withLocked(true));
    }
    return slab.withLaid(joints, List.of());
  }

  private static Jointing apart(double most, double least) {
    Jointing usual = Jointing.DEFAULT;
    return new Jointing(
        usual.rule(),
        Optional.of(Length.feet(most)),
        usual.aspect(),
        Optional.of(Length.feet(least)),
        usual.preference(),
        usual.kept());
  }

  private static double[] line(double... feet) {
    return feet;
  }

  static Stream<Helpless> plans() {
    return Stream.of(
        new Helpless(
            "joints closer than the narrowest panel",
            pad(8, 8).withJointing(apart(3, 4)),
            "check.c1.spacing"),
        new Helpless("zone across", with(pad(12, 24), zone(0, 10, 12, 13)), "check.c1.zoneUnnamed"),
        new Helpless("long zone", with(pad(9, 30), zone(0, 8, 9, 20)), "check.c1.zoneUnnamed"),
        new Helpless("pool", with(pad(30, 30), zone(9, 9, 21, 21)), "check.c1.zoneUnnamed"),
        new Helpless(
            "zone over all", with(pad(20, 20), zone(-1, -1, 21, 21)), "check.c1.zoneUnnamed"),
        new Helpless(
            "zones that cross",
            with(pad(20, 20), zone(0, 9, 20, 11), zone(9, 0, 11, 20)),
            "check.c1.zoneUnnamed"),
        new Helpless("zone along", with(pad(8, 32), zone(3, 0, 5, 32)), "check.c1.zoneUnnamed"),
        new Helpless(
            "locked joints that cross at 50 degrees",
            locking(pad(20, 20), line(0, 4, 20, 14), line(0, 14, 20, 4)),
            "check.c1.lockedSharp"),
        new Helpless(
            "locked joints a foot apart",
            locking(pad(20, 20), line(0, 10, 20, 10), line(0, 11, 20, 11)),
            "check.c1.lockedNarrow"),
        new Helpless(
            "locked joint at 32 degrees to its side",
            locking(pad(20, 20), line(0, 0.5, 12, 20)),
            "check.c1.lockedSharp"),
        new Helpless(
            "locked joint near a side",
            locking(pad(16, 16), line(0, 1, 16, 1)),
            "check.c1.lockedNarrow"),
        new Helpless(
            "locked joint off the slab",
            locking(pad(10, 10), line(5, 0, 5, 14)),
            "check.c1.lockedRun"));
  }

  @ParameterizedTest
  @MethodSource("plans")
  void noJointLeftOutOrMovedALittleBreaksLess(Helpless helpless) {
    Plan asked = Plan.EMPTY.withSlabs(List.of(helpless.slab()));
    Layout layout = LayoutEngine.lay(asked);
    Judgement judged = Checks.judge(asked, layout);
    assertThat(judged.of(Severity.MUST)).as("can be met after all").isNotEmpty();
    assertThat(judged.findings())
        .filteredOn(f -> f.rule().equals("C1"))
        .extracting(Finding::key)
        .contains(helpless.key());
    Slab laid = layout.plan().slabs().getFirst();
    double excess = excess(layout, judged);
    for (Joint j : laid.joints()) {
      if (j.locked() || j.kind() != JointKind.CONTRACTION) {
        continue;
      }
      List<Optional<Path>> others = new ArrayList<>(List.of(Optional.empty()));
      Point across = j.path().end().minus(j.path().start()).unit().left();
      for (double by : SHIFTS) {
        Optional<Path> moved = JointSlide.by(layout.plan(), laid.id(), j, across.times(by));
        moved.ifPresent(p -> others.add(moved));
      }
      for (Optional<Path> other : others) {
        Layout near = Layouts.of(layout.plan().withSlabs(List.of(changed(laid, j, other))));
        Judgement there = Checks.judge(asked, near);
        if (first(there) <= first(judged)) {
          assertThat(excess(near, there))
              .as("%s %s", j.path(), other)
              .isGreaterThanOrEqualTo(excess - EQUAL);
        }
      }
    }
  }

  private static Slab changed(Slab slab, Joint joint, Optional<Path> path) {
    return slab.withLaid(
        slab.joints().stream()
            .flatMap(j -> j.equals(joint) ? path.map(j::withPath).stream() : Stream.of(j))
            .toList(),
        slab.boxOuts());
  }

  private static long first(Judgement judgement) {
    return judgement.of(Severity.MUST).stream().filter(f -> FIRST.contains(f.rule())).count();
  }

  /**
   * The relative excess of each panel over its limits, weighted by its share of the slab: how a
   * layout that cannot be met is weighed.
   */
  private static double excess(Layout layout, Judgement judgement) {
    SlabLayout slab = layout.slabs().getFirst();
    double whole = slab.panels().stream().mapToDouble(Panel::area).sum();
    double sum = 0;
    for (Finding f : judgement.of(Severity.MUST)) {
      if (FIRST.contains(f.rule())) {
        continue;
      }
      double share =
          slab.panels().stream()
                  .filter(p -> f.panel().equals(Optional.of(p.id())))
                  .mapToDouble(Panel::area)
                  .sum()
              / whole;
      sum += share * Math.abs(f.measured() - f.limit()) / f.limit();
    }
    return sum;
  }
}
