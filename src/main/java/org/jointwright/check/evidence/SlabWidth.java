package org.jointwright.check.evidence;

import java.util.List;
import org.jointwright.check.face.Face;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Segment;
import org.jointwright.shape.jts.InscribedCircle;

/** How wide the slab itself is at a panel. */
public final class SlabWidth {
  private static final int DIRECTIONS = 60;

  private SlabWidth() {}

  /**
   * The shortest line across the concrete through the middle of the panel's largest circle, inches.
   */
  public static double at(Face face, Concrete concrete) {
    Point middle = InscribedCircle.of(face.panel().region()).centre();
    List<Edge> edges = concrete.edgesAndCutouts();
    double reach = reach(concrete.region());
    double best = Double.POSITIVE_INFINITY;
    for (int k = 0; k < DIRECTIONS; k++) {
      Point u = new Point(1, 0).turned(Math.PI * k / DIRECTIONS);
      best = Math.min(best, gap(edges, middle, u, reach) + gap(edges, middle, u.times(-1), reach));
    }
    return best;
  }

  private static double reach(Region region) {
    return region.outer().box().width() + region.outer().box().height();
  }

  private static double gap(List<Edge> edges, Point from, Point direction, double reach) {
    Segment ray = new Segment(from, from.plus(direction.times(reach)));
    double nearest = reach;
    for (Edge e : edges) {
      for (Crossing c : Crossing.of(ray, e)) {
        nearest = Math.min(nearest, c.at().distance(from));
      }
    }
    return nearest;
  }
}
