package org.jointwright.reason;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.Panel;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;

/** Leaves joints out of a slab, and judges what is left. */
final class LeftOut {
  /** The rules in the order in which a finisher would name them. */
  private static final List<String> ORDER =
      List.of("M3", "M1", "M2", "M7", "M8", "M5", "M4", "M10", "M6", "M9");

  /**
   * Rules that no joint is needed for: that it could be left out, that its marks are whole, and
   * that the user’s wishes agree.
   */
  private static final Set<String> NO_NEED = Set.of("S2", "S6", "C1");

  /** Figures that differ by less are the same. */
  private static final double SAME = 0.01;

  private static final double NEAR = 0.6;

  private final Plan asked;
  private final Layout layout;
  private final SlabLayout slab;
  private final Ground ground;
  private final List<Found> before;
  private final Outcome outcome;

  /** A finding, and the panel it is about. */
  private record Found(Finding finding, Optional<Panel> panel) {}

  LeftOut(Plan asked, Layout layout, SlabLayout slab, Ground ground, Judged judged) {
    this.asked = asked;
    this.layout = layout;
    this.slab = slab;
    this.ground = ground;
    before = judge(judged, slab);
    outcome = Outcome.of(judged);
  }

  /** What would be without the joints of those ids. */
  Without without(List<String> out) {
    Set<String> ids = Set.copyOf(out);
    List<Joint> gone = slab.joints().stream().filter(j -> ids.contains(j.id())).toList();
    Slab left = slab.slab();
    left =
        left.withLaid(
            left.joints().stream().filter(j -> !ids.contains(j.id())).toList(), left.boxOuts());
    Layout changed = Layouts.with(layout, left);
    SlabLayout now = changed.slab(left.id()).orElseThrow();
    Judged without = new Judged(unasked(gone), changed, now);
    List<Found> after = judge(without, now);
    List<Finding> fresh =
        after.stream()
            .filter(f -> before.stream().noneMatch(b -> isSame(b, f)))
            .map(Found::finding)
            .filter(f -> !NO_NEED.contains(f.rule()))
            .toList();
    List<Finding> breaks = of(fresh, Severity.MUST);
    return new Without(
        out,
        breaks,
        of(fresh, Severity.SHOULD),
        outcome,
        Outcome.of(without),
        Cracks.of(ground, breaks, ids));
  }

  private static List<Finding> of(List<Finding> findings, Severity severity) {
    return findings.stream()
        .filter(f -> f.severity() == severity)
        .sorted(Comparator.comparingInt(LeftOut::rank).thenComparing(LeftOut::worstFirst))
        .toList();
  }

  private static int rank(Finding f) {
    // Where joints meet, the corner is the next joint's doing: it comes after the slab's own.
    int rank = ORDER.indexOf(f.rule());
    boolean elbow = f.key().equals("check.m3.whereJointsMeet");
    return elbow ? ORDER.indexOf("M6") : rank < 0 ? ORDER.size() : rank;
  }

  private static int worstFirst(Finding a, Finding b) {
    int byExcess =
        Double.compare(Math.abs(b.measured() - b.limit()), Math.abs(a.measured() - a.limit()));
    return byExcess != 0
        ? byExcess
        : Comparator.<Finding>comparingDouble(f -> f.at().y())
            .thenComparingDouble(f -> f.at().x())
            .compare(a, b);
  }

  private static List<Found> judge(Judged judged, SlabLayout slab) {
    return Checks.judge(judged).findings().stream().map(f -> new Found(f, panel(f, slab))).toList();
  }

  private static Optional<Panel> panel(Finding f, SlabLayout slab) {
    return f.subject() instanceof Subject.OnPanel p
        ? slab.panels().stream().filter(x -> x.id().equals(p.panel())).findFirst()
        : Optional.empty();
  }

  /** Whether both say the same of the same place; panels may have got other numbers. */
  private static boolean isSame(Found a, Found b) {
    Finding f = a.finding();
    Finding g = b.finding();
    return f.key().equals(g.key())
        && Math.abs(f.measured() - g.measured()) <= SAME
        && (f.at().distance(g.at()) <= NEAR || isSamePanel(a.panel(), b.panel()));
  }

  private static boolean isSamePanel(Optional<Panel> a, Optional<Panel> b) {
    if (a.isEmpty() || b.isEmpty()) {
      return false;
    }
    Box p = a.get().ring().box();
    Box q = b.get().ring().box();
    return p.centre().distance(q.centre()) < SAME
        && Math.abs(p.width() - q.width()) < SAME
        && Math.abs(p.height() - q.height()) < SAME;
  }

  /** The plan that was asked for without its word that these joints stay. */
  private Plan unasked(List<Joint> gone) {
    return asked.slab(slab.slab().id()).isEmpty()
        ? asked
        : asked.withSlab(
            slab.slab().id(),
            s ->
                s.withLaid(
                    s.joints().stream()
                        .filter(j -> gone.stream().noneMatch(g -> overlap(j, g)))
                        .toList(),
                    s.boxOuts()));
  }

  private static boolean overlap(Joint a, Joint b) {
    return a.path().distance(b.path().edges().getFirst().at(0.5)) <= NEAR
        || b.path().distance(a.path().edges().getFirst().at(0.5)) <= NEAR;
  }
}
