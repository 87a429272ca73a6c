package org.jointwright.layout.piece;

import java.util.List;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.jspecify.annotations.Nullable;

/**
 * One closed line of a piece, the piece on its left: the outer one counter-clockwise, holes
 * clockwise. Immutable; what is asked often is worked out once.
 */
public final class Loop {
  private final List<Edge> edges;
  private final List<Integer> tags;
  private double @Nullable [] angles;

  /**
   * A loop.
   *
   * @param edges its edges in order
   * @param tags what each runs along: the number of a line from 0 up, or {@code -1 - h} for edge
   *     {@code h} of the {@link Ground}
   */
  public Loop(List<Edge> edges, List<Integer> tags) {
    this.edges = List.copyOf(edges);
    this.tags = List.copyOf(tags);
  }

  /** Its edges in order. */
  public List<Edge> edges() {
    return edges;
  }

  /** What each edge runs along. */
  public List<Integer> tags() {
    return tags;
  }

  /** How many edges it has. */
  public int size() {
    return edges.size();
  }

  /** Edge {@code i}, counted round. */
  public Edge edge(int i) {
    return edges.get(Math.floorMod(i, edges.size()));
  }

  /** The tag of edge {@code i}, counted round. */
  public int tag(int i) {
    return tags.get(Math.floorMod(i, tags.size()));
  }

  /** Whether edge {@code i} is the slab's own, an opening's or a box-out's. */
  public boolean isHard(int i) {
    return tag(i) < 0;
  }

  /** The distance from {@code p} to its nearest point, inches. */
  public double distance(Point p) {
    double least = Double.POSITIVE_INFINITY;
    for (Edge e : edges) {
      least = Math.min(least, e.distance(p));
    }
    return least;
  }

  /** Twice the signed area, square inches. */
  double doubleArea() {
    Point o = edges.getFirst().start();
    double sum = 0;
    for (Edge e : edges) {
      double ax = e.start().x() - o.x();
      double ay = e.start().y() - o.y();
      double bx = e.end().x() - o.x();
      double by = e.end().y() - o.y();
      sum += ax * by - ay * bx;
      if (e instanceof Arc a) {
        double r = a.radius();
        sum += r * r * (a.sweep() - Math.sin(a.sweep()));
      }
    }
    return sum;
  }

  /** Whether a ray from {@code p} crosses it an odd number of times. */
  boolean surrounds(Point p) {
    boolean odd = false;
    for (Edge e : edges) {
      odd ^= crosses(e.start(), e.end(), p);
      if (e instanceof Arc a) {
        odd ^= inBow(a, p);
      }
    }
    return odd;
  }

  private static boolean crosses(Point a, Point b, Point p) {
    return (a.y() > p.y()) != (b.y() > p.y()) && p.x() < crossing(a, b, p);
  }

  private static double crossing(Point a, Point b, Point p) {
    return (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x();
  }

  /**
   * Whether {@code p} lies between an arc and its chord; on the chord, as {@link #crosses} says.
   */
  private static boolean inBow(Arc arc, Point p) {
    if (p.distance(arc.centre()) >= arc.radius()) {
      return false;
    }
    Point a = arc.start();
    Point b = arc.end();
    boolean left =
        a.y() == b.y()
            ? (p.y() >= a.y()) == b.x() > a.x()
            : (p.x() < crossing(a, b, p)) == b.y() > a.y();
    return arc.sweep() > 0 ? !left : left;
  }

  /** The interior angle at the start of edge {@code i} from the true tangents, degrees. */
  public double angle(int i) {
    double[] all = angles;
    if (all == null) {
      all = new double[size()];
      for (int k = 0; k < all.length; k++) {
        all[k] = angleAt(k);
      }
      angles = all;
    }
    return all[Math.floorMod(i, all.length)];
  }

  private double angleAt(int i) {
    Point in = edge(i - 1).direction(1);
    Point out = edge(i).direction(0);
    // From the edge ahead round to the edge behind, in one step.
    double angle = Math.toDegrees(Math.atan2(in.cross(out), in.dot(out)));
    angle = 180 - angle;
    return angle < 1e-7 && isSlit(i) ? 360 : angle;
  }

  /** Whether the loop turns back on itself at the start of edge {@code i}. */
  private boolean isSlit(int i) {
    return tag(i) == tag(i - 1) && edge(i - 1) instanceof Segment;
  }

  /** Whether {@code direction}, leaving the start of edge {@code i}, points into the piece. */
  boolean opensTo(int i, Point direction) {
    Point out = edge(i).direction(0);
    double turn = Math.toDegrees(direction.angle() - out.angle());
    if (turn < 0) {
      turn += 360;
    }
    return turn > 0.05 && turn < angle(i) - 0.05;
  }
}
