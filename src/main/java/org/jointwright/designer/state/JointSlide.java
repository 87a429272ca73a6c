package org.jointwright.designer.state;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.joint.Numbering;
import org.jointwright.measure.Length;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * Slides a straight joint sideways; its ends run along whatever they stood on: the outline, an
 * opening, a box-out, another joint.
 */
public final class JointSlide {
  /** A joint shorter than this is none, inches. */
  private static final double SHORTEST = 6;

  /** An end this near to a line stands on it, inches. */
  private static final double ON = 0.5;

  /** The sine up to which a joint runs the way it ran. */
  private static final double SAME_WAY = 1e-3;

  private JointSlide() {}

  /** Whether the joint can be slid: straight, and to be cut. */
  public static boolean canSlide(Joint joint) {
    return joint.kind() == JointKind.CONTRACTION
        && joint.path().edges().size() == 1
        && joint.path().edges().getFirst() instanceof Segment;
  }

  /** Where the joint runs after it was slid by {@code by}; empty where it has no place there. */
  public static Optional<Path> by(Plan plan, String slabId, Joint joint, Point by) {
    Slab slab = plan.slab(slabId).orElseThrow();
    Point start = joint.path().start();
    Point end = joint.path().end();
    Point along = end.minus(start).unit();
    Point across = along.left().times(by.dot(along.left()));
    Point a = start.plus(across);
    Point b = end.plus(across);
    double far = slab.outline().ring().box().width() + slab.outline().ring().box().height();
    Segment line = new Segment(a.minus(along.times(far)), b.plus(along.times(far)));
    List<Edge> rims = rims(slab);
    Optional<Point> first = nearest(line, lines(slab, joint, start, rims), a);
    Optional<Point> second = nearest(line, lines(slab, joint, end, rims), b);
    if (first.isEmpty() || second.isEmpty()) {
      return Optional.empty();
    }
    Point from = first.get();
    Point to = second.get();
    boolean isShort = to.minus(from).dot(along) < SHORTEST;
    return isShort || !slab.outline().ring().contains(from.towards(to, 0.5))
        ? Optional.empty()
        : Optional.of(Path.straight(from, to));
  }

  /** The desk with the joint's mark at a typed distance; empty where it has no place there. */
  public static Optional<Desk> toMark(Desk desk, Pick.AtJoint pick, JointMark mark, Length at) {
    Joint joint = Picks.joint(desk.plan(), pick).orElseThrow();
    if (at.inches() <= 0 || at.inches() >= mark.tape().length()) {
      return Optional.empty();
    }
    Point by = onTape(mark, at.inches()).minus(mark.place());
    return by(desk.plan(), pick.slab(), joint, by)
        .map(p -> desk.editedOnly(move(desk.plan(), pick, joint, p)));
  }

  /**
   * The edit that moves a joint to where it was slid, all of its line with it; a joint that was
   * turned goes alone.
   */
  public static JointEdit.Move move(Plan plan, Pick.AtJoint pick, Joint joint, Path to) {
    Map<String, Path> along = new HashMap<>();
    Point way = joint.path().end().minus(joint.path().start()).unit();
    boolean isSlid = Math.abs(to.end().minus(to.start()).unit().cross(way)) < SAME_WAY;
    if (isSlid) {
      Point by = to.start().minus(joint.path().start());
      for (Joint j : line(plan, pick.slab(), joint)) {
        by(plan, pick.slab(), j, by).ifPresent(p -> along.put(j.id(), p));
      }
    }
    return new JointEdit.Move(pick.slab(), pick.joint(), to, along);
  }

  /** The other joints of the line that a joint is a part of. */
  private static List<Joint> line(Plan plan, String slab, Joint joint) {
    return Numbering.of(plan).of(slab, joint).stream()
        .flatMap(i -> i.joints().stream())
        .filter(j -> !j.equals(joint) && canSlide(j))
        .toList();
  }

  /** The point of the mark's tape at a running distance. */
  public static Point onTape(JointMark mark, double at) {
    double left = at;
    for (Edge e : mark.tape().path().edges()) {
      if (left <= e.length()) {
        return e.at(left / e.length());
      }
      left -= e.length();
    }
    return mark.tape().path().end();
  }

  private static List<Edge> rims(Slab slab) {
    List<Edge> rims = new ArrayList<>(slab.outline().ring().edges());
    for (Opening o : slab.openings()) {
      rims.addAll(o.outline().ring().edges());
    }
    for (BoxOut b : slab.boxOuts()) {
      rims.addAll(b.outline().ring().edges());
    }
    return rims;
  }

  /** What an end may run along: the joint that it ended at, or else the rims of the slab. */
  private static List<Edge> lines(Slab slab, Joint joint, Point end, List<Edge> rims) {
    if (rims.stream().anyMatch(e -> e.distance(end) <= ON)) {
      return rims;
    }
    List<Edge> lines = new ArrayList<>(rims);
    for (Joint j : slab.joints()) {
      if (!j.equals(joint) && j.path().distance(end) <= ON) {
        lines.addAll(j.path().edges());
      }
    }
    return lines;
  }

  private static Optional<Point> nearest(Segment line, List<Edge> lines, Point to) {
    return lines.stream()
        // The place on the edge itself: the line is far longer, and its arithmetic noisier.
        .flatMap(e -> Crossing.of(line, e).stream().map(c -> e.at(c.second())))
        .min(java.util.Comparator.comparingDouble(p -> p.distance(to)));
  }
}
