package org.jointwright.check.evidence;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.check.evidence.JointEnds.End;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Tape;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Joint ends that stand off the tape's whole marks though nothing forces them. */
public final class OffMarks {
  private static final double NEAR = Tolerance.LINE_UP.value().inches();

  /**
   * Such an end.
   *
   * @param end the end
   * @param along how far it stands from the corner where the tape hooks, inches
   * @param tape the side of the slab
   */
  public record Off(End end, double along, Tape tape) {}

  private final Judged slab;
  private final UnitSystem units;
  private final List<Tape> tapes;
  private final List<Point> given = new ArrayList<>();
  private final List<End> ends;

  private OffMarks(Judged slab) {
    this.slab = slab;
    units = UnitSystem.of(slab.plan().unit());
    tapes = Lettering.of(slab.plan()).tapes().stream().filter(Tape::isStraight).toList();
    ends = JointEnds.of(slab);
    for (GivenJoint g : slab.plan().given()) {
      given.add(g.path().start());
      given.add(g.path().end());
    }
    slab.plan().slabs().stream()
        .filter(s -> !s.id().equals(slab.slab().id()))
        .flatMap(s -> s.joints().stream())
        .forEach(
            j -> {
              given.add(j.path().start());
              given.add(j.path().end());
            });
    features(slab.slab());
  }

  private void features(Slab s) {
    List<Edge> edges = s.outline().ring().edges();
    s.edges()
        .forEach(
            (i, setting) ->
                setting
                    .features()
                    .forEach(
                        f -> {
                          Edge e = edges.get(i);
                          given.add(e.at(Math.min(1, f.from() / e.length())));
                          given.add(e.at(Math.min(1, f.to() / e.length())));
                        }));
  }

  /**
   * The ends that could as well stand on a whole mark. Forced are those of locked joints, those
   * that meet a feature, a given joint or a neighbour's, and those in line with a corner, an arc or
   * a box-out. A joint between sides that are not parallel is measured out at one of its ends.
   */
  public static List<Off> of(Judged slab) {
    OffMarks marks = new OffMarks(slab);
    Set<String> forced = marks.forced();
    List<Off> found = new ArrayList<>();
    for (End e : marks.ends) {
      if (marks.isMeasured(e) && !forced.contains(e.joint().id())) {
        for (Tape t : marks.tapes) {
          if (t.carries(e.at(), Tolerance.MARK.value().inches())) {
            marks.off(e, t).ifPresent(found::add);
            break;
          }
        }
      }
    }
    return found;
  }

  private Optional<Off> off(End e, Tape t) {
    double along = t.distanceTo(e.at());
    boolean whole = Marks.offWhole(t.path().length(), along, units) <= Marks.NEAR;
    boolean byTheOther =
        ends.stream()
            .filter(o -> o.joint().equals(e.joint()) && o.last() != e.last())
            .anyMatch(o -> !isParallel(o.edge(), e.edge()) && isWhole(o));
    return whole || byTheOther ? Optional.empty() : Optional.of(new Off(e, along, t));
  }

  private boolean isWhole(End e) {
    return tapes.stream()
        .filter(t -> t.carries(e.at(), Tolerance.MARK.value().inches()))
        .anyMatch(
            t -> Marks.offWhole(t.path().length(), t.distanceTo(e.at()), units) <= Marks.NEAR);
  }

  private static boolean isParallel(Edge a, Edge b) {
    double most = Math.sin(Math.toRadians(Angles.SLANT.value()));
    return Math.abs(a.direction(0).cross(b.direction(0))) <= most;
  }

  private boolean isMeasured(End e) {
    return !e.atCorner()
        && !e.onBoxOut()
        && e.edge() instanceof Segment
        && given.stream().noneMatch(g -> g.distance(e.at()) <= NEAR);
  }

  /** The joints whose line something else than a mark decides, and those that go on from them. */
  private Set<String> forced() {
    Set<String> forced = new HashSet<>();
    for (Joint j : slab.joints()) {
      if (j.locked()) {
        forced.add(j.id());
      }
    }
    ends.stream().filter(e -> !isMeasured(e)).forEach(e -> forced.add(e.joint().id()));
    List<Joint> joints = slab.joints();
    boolean more = true;
    while (more) {
      more = false;
      for (Joint j : joints) {
        if (!forced.contains(j.id())
            && joints.stream().anyMatch(o -> forced.contains(o.id()) && goesOn(o, j))) {
          more = forced.add(j.id());
        }
      }
    }
    return forced;
  }

  /** Whether one joint goes on where another ends, in one line with it. */
  private static boolean goesOn(Joint a, Joint b) {
    double straight = Math.cos(Math.toRadians(Angles.THROUGH.value()));
    Point u = b.path().end().minus(b.path().start());
    Point v = a.path().end().minus(a.path().start());
    boolean inLine = Math.abs(u.dot(v)) > straight * u.norm() * v.norm();
    return inLine
        && List.of(a.path().start(), a.path().end()).stream()
            .anyMatch(
                p -> p.distance(b.path().start()) <= NEAR || p.distance(b.path().end()) <= NEAR);
  }
}
