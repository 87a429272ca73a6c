package org.jointwright.fix;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.jointwright.check.Finding;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.Meeting;
import org.jointwright.plan.Against;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.History;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** S7 has filler between the slabs as its cure: it is offered as one step, and undone as one. */
class FillBetweenTest {
  private static Slab slab(String id, double x1, double y1, double x2, double y2, Joint... joints) {
    Outline outline =
        Outline.of(
            List.of(new Point(x1, y1), new Point(x2, y1), new Point(x2, y2), new Point(x1, y2)));
    return Slab.of(id, outline).withLaid(List.of(joints), List.of());
  }

  private static Joint joint(
      String id, JointKind kind, double x1, double y1, double x2, double y2) {
    Purpose purpose = kind == JointKind.CONTRACTION ? Purpose.SPACING : Purpose.SHARED_EDGE;
    return Joint.of(id, kind, Path.straight(new Point(x1, y1), new Point(x2, y2)), purpose);
  }

  /** A drive 20 ft deep and, left of it, a patio from {@code low} to {@code high}. */
  private static Plan sideBySide(double low, double high) {
    double shared = Math.min(high, 240);
    Slab drive =
        slab(
            "drive",
            0,
            0,
            120,
            240,
            joint("J1", JointKind.CONTRACTION, 0, 120, 120, 120),
            joint("J2", JointKind.CONSTRUCTION, 0, shared, 0, low));
    Slab patio =
        slab(
            "patio",
            -120,
            low,
            0,
            high,
            joint("J1", JointKind.CONTRACTION, -120, low + 70, 0, low + 70));
    return Plan.EMPTY.withSlabs(List.of(drive, patio));
  }

  private static Finding missed(Layout layout) {
    return Checks.judge(layout).findings().stream()
        .filter(f -> f.rule().equals("S7"))
        .findFirst()
        .orElseThrow();
  }

  private static Fix filler(Plan plan) {
    Layout layout = Layouts.of(plan);
    List<Fix> fixes = Fixes.of(plan, layout, missed(layout));
    return fixes.stream()
        .filter(f -> f.key().equals("fix.filler.between"))
        .findFirst()
        .orElseThrow(() -> new AssertionError(fixes.stream().map(Fix::key).toList()));
  }

  @Test
  void aSideThatLiesWholeOnTheNeighbourIsFilledAndStaysSo() {
    Plan plan = sideBySide(60, 200);
    Fix fix = filler(plan);
    assertThat(fix.arguments()).as("the stretch, not the drive’s whole side").contains("F–G");
    Plan filled = fix.edit().applyTo(plan);
    assertThat(Checks.judge(Layouts.of(filled)).findings())
        .noneMatch(f -> f.rule().equals("S7") || f.rule().equals("M7"));
    Slab patio = filled.slab("patio").orElseThrow();
    assertThat(IntStream.range(0, 4).mapToObj(i -> patio.edge(i).against()))
        .containsOnlyOnce(Against.CONCRETE);
    assertThat(Meeting.of(filled)).singleElement().matches(m -> m.needsIsolation(filled));
    List<Joint> along = filled.slab("drive").orElseThrow().joints();
    assertThat(along).extracting(Joint::kind).doesNotContain(JointKind.CONSTRUCTION);
    Joint filler =
        along.stream().filter(j -> j.kind() == JointKind.ISOLATION).findFirst().orElseThrow();
    assertThat(filler.path().length()).isEqualTo(140);
    assertThat(filler.locked()).as("it comes again by itself").isFalse();
    assertThat(History.begun(plan).done(fix.edit()).undone().now()).isEqualTo(plan);
  }

  @Test
  void whereNoSideLiesWholeTheFillerItselfIsLocked() {
    Plan plan = sideBySide(60, 300);
    Plan filled = filler(plan).edit().applyTo(plan);
    Slab patio = filled.slab("patio").orElseThrow();
    assertThat(IntStream.range(0, 4).mapToObj(i -> patio.edge(i).against()))
        .doesNotContain(Against.CONCRETE);
    assertThat(filled.slab("drive").orElseThrow().joints())
        .filteredOn(j -> j.kind() == JointKind.ISOLATION)
        .singleElement()
        .matches(Joint::locked);
  }
}
