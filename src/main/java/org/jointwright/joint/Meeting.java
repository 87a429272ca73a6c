package org.jointwright.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * A stretch where the outlines of two slabs of a plan run along each other.
 *
 * @param first the id of the slab that comes first in the plan
 * @param firstEdge the number of its edge
 * @param second the id of the other slab
 * @param secondEdge the number of its edge
 * @param stretch the stretch, in the direction of the first slab's edge
 */
public record Meeting(String first, int firstEdge, String second, int secondEdge, Edge stretch) {
  /** How far apart two edges may run and still be one, inches: the rules' length tolerance. */
  private static final double APART = 0.5;

  /** A shorter stretch is a touch at a corner, inches. */
  private static final double SHORTEST = 1;

  /** Every meeting of a plan, in the order of its slabs and edges. */
  public static List<Meeting> of(Plan plan) {
    List<Meeting> meetings = new ArrayList<>();
    List<Slab> slabs = plan.slabs();
    for (int a = 0; a < slabs.size(); a++) {
      List<Edge> own = slabs.get(a).outline().ring().edges();
      for (int b = a + 1; b < slabs.size(); b++) {
        List<Edge> others = slabs.get(b).outline().ring().edges();
        for (int i = 0; i < own.size(); i++) {
          for (int j = 0; j < others.size(); j++) {
            Optional<Edge> stretch = common(own.get(i), others.get(j));
            if (stretch.isPresent()) {
              String first = slabs.get(a).id();
              meetings.add(new Meeting(first, i, slabs.get(b).id(), j, stretch.get()));
            }
          }
        }
      }
    }
    return meetings;
  }

  /**
   * Whether filler is asked there: what the plan says of either edge holds for both.
   *
   * @param plan the plan that this meeting is of
   */
  public boolean needsIsolation(Plan plan) {
    return needsIsolation(plan, first, firstEdge) || needsIsolation(plan, second, secondEdge);
  }

  private static boolean needsIsolation(Plan plan, String slab, int edge) {
    return plan.slab(slab).map(s -> s.edge(edge).needsIsolation()).orElse(false);
  }

  private static Optional<Edge> common(Edge a, Edge b) {
    if (!a.box().grown(APART).meets(b.box()) || !sameLine(a, b)) {
      return Optional.empty();
    }
    double one = a.nearest(b.start());
    double two = a.nearest(b.end());
    double from = Math.min(one, two);
    double to = Math.max(one, two);
    if ((to - from) * a.length() < SHORTEST) {
      return Optional.empty();
    }
    Point middle = a.at((from + to) / 2);
    return b.distance(middle) <= APART ? Optional.of(a.part(from, to)) : Optional.empty();
  }

  private static boolean sameLine(Edge a, Edge b) {
    return switch (a) {
      case Segment s ->
          switch (b) {
            case Segment t -> beside(s, t) && beside(t, s);
            case Arc c -> false;
          };
      case Arc c ->
          switch (b) {
            case Segment t -> false;
            case Arc d ->
                c.centre().distance(d.centre()) <= APART
                    && Math.abs(c.radius() - d.radius()) <= APART;
          };
    };
  }

  /** Whether the nearer of the common ends lie within reach of a's line. */
  private static boolean beside(Segment a, Segment b) {
    Point u = a.direction(0);
    Point at = b.at(b.nearest(a.start()));
    Point to = b.at(b.nearest(a.end()));
    return Math.abs(u.cross(at.minus(a.start()))) <= APART
        && Math.abs(u.cross(to.minus(a.start()))) <= APART;
  }
}
