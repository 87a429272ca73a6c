package org.jointwright.layout.boxout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Chords;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/** The box-outs of a slab and the filler round them. */
public final class BoxOuts {
  private static final double CLEAR = org.jointwright.practice.BoxOuts.CLEAR.value().inches();

  private BoxOuts() {}

  /** A box-out round each fixed object. */
  public static List<BoxOut> round(Slab slab, List<FixedObject> objects, boolean metric) {
    List<BoxOut> found = new ArrayList<>();
    Ring outline = slab.outline().ring();
    Point axis = longestDirection(outline);
    for (FixedObject f : objects) {
      Ring object = f.shape().ring();
      Outline square = turnedSquare(object, axis, metric);
      Outline shape =
          nearestEdge(outline, object, square).map(e -> half(object, e, metric)).orElse(square);
      found.add(new BoxOut(f.id(), shape, Kept.NOTHING));
    }
    return found;
  }

  /** The edge that a box-out would run over. */
  private static Optional<Segment> nearestEdge(Ring outline, Ring object, Outline square) {
    Optional<Segment> best = Optional.empty();
    double least = CLEAR;
    for (Edge e : outline.edges()) {
      if (e instanceof Segment s && e.length() > 0) {
        Point inwards = s.direction(0).left();
        double in = Double.POSITIVE_INFINITY;
        for (Point p : Chords.round(object, 0.02)) {
          in = Math.min(in, p.minus(s.start()).dot(inwards));
        }
        boolean beside = square.vertices().stream().anyMatch(v -> s.distance(v.at()) < 60);
        if (beside && in < least) {
          least = in;
          best = Optional.of(s);
        }
      }
    }
    return best;
  }

  /** Half a square on its corner, its long side on the edge. */
  private static Outline half(Ring object, Segment edge, boolean metric) {
    Point u = edge.direction(0);
    Point v = u.left();
    List<Point> points =
        Chords.round(object, 0.02).stream().map(p -> p.minus(edge.start())).toList();
    double[] along = extent(points, u);
    double middle = (along[0] + along[1]) / 2;
    double reach = 0;
    for (Point p : points) {
      reach = Math.max(reach, Math.abs(p.dot(u) - middle) + Math.max(0, p.dot(v)));
    }
    double corner = wholeStep(reach + CLEAR * Math.sqrt(2), metric);
    Point foot = edge.start().plus(u.times(middle));
    return Outline.of(
        List.of(
            foot.plus(u.times(-corner)), foot.plus(u.times(corner)), foot.plus(v.times(corner))));
  }

  /** Whole inches from the middle to each corner, so that the form is easily cut. */
  private static double wholeStep(double inches, boolean metric) {
    double step = metric ? 10 / 25.4 : 1;
    return Math.ceil(inches / step - 1e-6) * step;
  }

  private static Point longestDirection(Ring ring) {
    Edge longest = ring.edges().getFirst();
    for (Edge e : ring.edges()) {
      if (e instanceof Segment && (longest.turn() != 0 || e.length() > longest.length() + 0.01)) {
        longest = e;
      }
    }
    return longest instanceof Segment s ? s.direction(0) : new Point(1, 0);
  }

  /** A square on its corner round {@code object}, its diagonals along the slab's edges. */
  static Outline turnedSquare(Ring object, Point axis, boolean metric) {
    List<Point> points = Chords.round(object, 0.02);
    Point a = axis.turned(Math.PI / 4);
    Point b = a.left();
    double[] along = extent(points, a);
    double[] across = extent(points, b);
    Point centre = a.times((along[0] + along[1]) / 2).plus(b.times((across[0] + across[1]) / 2));
    double half = Math.max(along[1] - along[0], across[1] - across[0]) / 2 + CLEAR;
    double corner = wholeStep(half * Math.sqrt(2), metric);
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      corners.add(centre.plus(axis.turned(i * Math.PI / 2).times(corner)));
    }
    return Outline.of(corners);
  }

  private static double[] extent(List<Point> points, Point u) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Point p : points) {
      low = Math.min(low, p.dot(u));
      high = Math.max(high, p.dot(u));
    }
    return new double[] {low, high};
  }

  /** The filler round box-outs, as far as it does not lie on the slab's edge. */
  public static List<Joint> filler(List<BoxOut> boxes, Slab slab) {
    List<Joint> found = new ArrayList<>();
    Ring outline = slab.outline().ring();
    for (BoxOut b : boxes) {
      List<Edge> edges = b.outline().ring().edges();
      int n = edges.size();
      int first = 0;
      while (first < n && !onEdge(outline, edges.get(first))) {
        first++;
      }
      List<Edge> free = new ArrayList<>();
      for (int i = first; i < first + n; i++) {
        Edge e = edges.get(i % n);
        if (!onEdge(outline, e)) {
          free.add(e);
        }
      }
      found.add(Joint.of("", JointKind.ISOLATION, new Path(free), Purpose.ISOLATION));
    }
    return found;
  }

  private static boolean onEdge(Ring outline, Edge edge) {
    return outline.distance(edge.at(0.5)) < 0.1
        && outline.distance(edge.start()) < 0.1
        && outline.distance(edge.end()) < 0.1;
  }
}
