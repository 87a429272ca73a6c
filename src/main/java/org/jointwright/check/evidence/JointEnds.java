package org.jointwright.check.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.jointwright.check.along.Nearness;
import org.jointwright.check.face.Turn;
import org.jointwright.joint.Cutout;
import org.jointwright.joint.Source;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** Where the contraction joints of a slab end on its edges; corner joints left out. */
public final class JointEnds {
  /** A place where an edge turns by more is a corner to measure from and to end at, degrees. */
  private static final double CORNER = 5;

  /** What rounding may take from a distance, inches. */
  private static final double SLACK = 1e-9;

  /**
   * An end on an edge of the outline, of an opening or of a box-out.
   *
   * @param joint the joint
   * @param last whether it is the joint's last end, not its first
   * @param at where it stands, on the edge
   * @param edge the edge
   * @param source which edge that is
   * @param along the share of the edge's length where it stands
   * @param atCorner whether it stands at a corner of the outline, an opening or a box-out
   */
  public record End(
      Joint joint,
      boolean last,
      Point at,
      Edge edge,
      Source source,
      double along,
      boolean atCorner) {
    /** How far the joint stands off square to the edge, off the radius at an arc; degrees. */
    public double offSquare() {
      Edge own = last ? joint.path().edges().getLast() : joint.path().edges().getFirst();
      double dot = Math.abs(own.direction(last ? 1 : 0).dot(edge.direction(along)));
      return Math.toDegrees(Math.asin(Math.min(1, dot)));
    }

    /** Whether it stands on the edge of a box-out. */
    public boolean onBoxOut() {
      return source instanceof Source.OnBoxOut;
    }
  }

  private record Line(Edge edge, Source source) {}

  private final List<Line> lines = new ArrayList<>();
  private final List<Point> corners = new ArrayList<>();

  private JointEnds(Judged slab) {
    add(slab.slab().outline().ring(), Source.OnOutline::new);
    for (int n = 0; n < slab.slab().openings().size(); n++) {
      int opening = n;
      add(slab.slab().openings().get(n).outline().ring(), i -> new Source.OnOpening(opening, i));
    }
    for (Cutout c : slab.concrete().cutouts()) {
      add(c.ring(), i -> new Source.OnBoxOut(c.fixed(), i));
    }
  }

  private void add(Ring ring, IntFunction<Source> source) {
    List<Edge> edges = ring.edges();
    for (int i = 0; i < edges.size(); i++) {
      lines.add(new Line(edges.get(i), source.apply(i)));
      Edge before = edges.get((i + edges.size() - 1) % edges.size());
      if (Math.abs(Turn.degrees(before, edges.get(i))) > CORNER) {
        corners.add(edges.get(i).start());
      }
    }
  }

  /** The ends of a slab's contraction joints, joint by joint. */
  public static List<End> of(Judged slab) {
    JointEnds ends = new JointEnds(slab);
    List<End> found = new ArrayList<>();
    for (Joint j : slab.joints()) {
      if (j.kind() == JointKind.CONTRACTION && !slab.corners().joints().contains(j.id())) {
        ends.end(j, false).ifPresent(found::add);
        ends.end(j, true).ifPresent(found::add);
      }
    }
    return found;
  }

  private Optional<End> end(Joint joint, boolean last) {
    Point p = last ? joint.path().end() : joint.path().start();
    Line best = null;
    double nearest = Nearness.ON;
    for (Line line : lines) {
      if (line.edge().box().grown(Nearness.ON).holds(p)
          && line.edge().distance(p) < nearest - SLACK) {
        best = line;
        nearest = line.edge().distance(p);
      }
    }
    if (best == null) {
      return Optional.empty();
    }
    double along = best.edge().nearest(p);
    Point at = best.edge().at(along);
    boolean atCorner = corners.stream().anyMatch(c -> c.distance(at) <= Tolerance.LENGTH_INCHES);
    return Optional.of(new End(joint, last, at, best.edge(), best.source(), along, atCorner));
  }
}
