package org.jointwright.check.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.along.Alongside;
import org.jointwright.check.along.Nearness;
import org.jointwright.check.along.Stretches;
import org.jointwright.check.along.Stretches.Stretch;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.evidence.LooseEnds;
import org.jointwright.check.evidence.Outside;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.practice.Cited;
import org.jointwright.practice.JointRuns;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * M6, anchored joints: each end lies on an edge, a box-out or another joint; joints stay on the
 * concrete, do not lie on each other or along edges, and are straight or one arc. Filler may bend
 * and run along edges.
 */
public final class Anchorage implements Check {
  private static final List<Cited> ENDS = List.of(JointRuns.ENDS);
  private static final double ALONG = Tolerance.ALONG.value().inches();

  /** A short joint lies on another line when this share of it does. */
  private static final double NEARLY_ALL = 0.9;

  private static final double NEAR = Tolerance.LENGTH_INCHES;

  @Override
  public String rule() {
    return "M6";
  }

  @Override
  public Severity severity() {
    return Severity.MUST;
  }

  @Override
  public List<Cited> sources() {
    return List.of(JointRuns.ENDS, JointRuns.STRAIGHT);
  }

  @Override
  public List<Finding> findings(Judged slab) {
    List<Finding> findings = new ArrayList<>();
    List<Joint> joints = slab.joints();
    for (int i = 0; i < joints.size(); i++) {
      Joint j = joints.get(i);
      bent(slab, j).ifPresent(findings::add);
      outside(slab, j).ifPresent(findings::add);
      alongEdge(slab, j).ifPresent(findings::add);
      for (Joint other : joints.subList(i + 1, joints.size())) {
        onOther(slab, j, other).ifPresent(findings::add);
      }
    }
    for (LooseEnds.End end : LooseEnds.of(slab)) {
      findings.add(
          finding(
              slab,
              end.joint(),
              end.at(),
              end.gap(),
              NEAR,
              "check.m6.loose",
              end.joint().id(),
              Length.inches(end.gap())));
    }
    return findings;
  }

  private Optional<Finding> bent(Judged slab, Joint j) {
    List<Edge> edges = j.path().edges();
    boolean oneLine = edges.size() == 1;
    boolean circle =
        j.path().isClosed() && edges.size() == 2 && edges.stream().allMatch(e -> e instanceof Arc);
    if (j.kind() == JointKind.ISOLATION || oneLine || circle) {
      return Optional.empty();
    }
    Point at = edges.get(edges.size() / 2).start();
    return Optional.of(
        finding(slab, j, at, edges.size(), 1, "check.m6.bent", j.id(), edges.size()));
  }

  private Optional<Finding> outside(Judged slab, Joint j) {
    boolean filler = j.kind() == JointKind.ISOLATION;
    List<Stretch> out = new Outside(slab.concrete(), filler).of(j.path());
    if (out.isEmpty()) {
      return Optional.empty();
    }
    double length = Stretches.length(out);
    return Optional.of(
        finding(
            slab,
            j,
            out.getFirst().middle(),
            length,
            0,
            "check.m6.outside",
            j.id(),
            Length.inches(length)));
  }

  private Optional<Finding> alongEdge(Judged slab, Joint j) {
    if (j.kind() == JointKind.ISOLATION) {
      return Optional.empty();
    }
    List<Edge> edges = slab.concrete().edges();
    List<Edge> shared = j.kind() == JointKind.CONSTRUCTION ? slab.edgesOfOtherSlabs() : List.of();
    List<Stretch> on = Alongside.of(j.path(), edges, p -> Nearness.isOn(shared, p, 2 * NEAR));
    for (Stretch s : on) {
      if (isTooLong(s.length(), j.path().length())) {
        return Optional.of(
            finding(
                slab,
                j,
                s.middle(),
                s.length(),
                0,
                "check.m6.alongEdge",
                j.id(),
                Length.inches(s.length())));
      }
    }
    return Optional.empty();
  }

  private Optional<Finding> onOther(Judged slab, Joint j, Joint other) {
    // Most joints of a great slab are nowhere near each other: asking that first spares the rest.
    if (!box(j).grown(1).meets(box(other))) {
      return Optional.empty();
    }
    List<Stretch> on = Alongside.of(j.path(), other.path().edges(), p -> false);
    double length = Stretches.length(on);
    if (!isTooLong(length, Math.min(j.path().length(), other.path().length()))) {
      return Optional.empty();
    }
    return Optional.of(
        finding(
            slab,
            j,
            on.getFirst().middle(),
            length,
            0,
            "check.m6.onOther",
            j.id(),
            other.id(),
            Length.inches(length)));
  }

  private static Box box(Joint j) {
    return j.path().edges().stream().map(Edge::box).reduce(Box::with).orElseThrow();
  }

  private static boolean isTooLong(double length, double whole) {
    return length > ALONG || (length > NEARLY_ALL * whole && length > 2 * NEAR);
  }

  private Finding finding(
      Judged slab,
      Joint j,
      Point at,
      double measured,
      double limit,
      String key,
      Object... arguments) {
    return finding(slab, ENDS, new Subject.OnJoint(j.id()), at, measured, limit, key, arguments);
  }
}
