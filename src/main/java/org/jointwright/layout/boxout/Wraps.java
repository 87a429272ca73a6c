package org.jointwright.layout.boxout;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Vertex;
import org.jointwright.practice.BoxOuts;
import org.jointwright.shape.Chords;
import org.jointwright.shape.EnclosingRectangle;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * Outlines that stand clear of an object all round, in sizes that are easily formed.
 *
 * @param object its outline
 * @param metric whether sizes go up in steps of 10 mm rather than of an inch
 */
record Wraps(Ring object, boolean metric) {
  private static final double CLEAR = BoxOuts.CLEAR.value().inches();
  private static final double CHORD_ERROR = 0.02;

  private List<Point> points() {
    return Chords.round(object, CHORD_ERROR);
  }

  /** The middle of the object's box along {@code axis}. */
  Point middle(Point axis) {
    double[] along = extent(axis);
    double[] across = extent(axis.left());
    return axis.times((along[0] + along[1]) / 2)
        .plus(axis.left().times((across[0] + across[1]) / 2));
  }

  /** A square on its corner about {@code centre}, its corners along {@code axis} and across. */
  Outline turned(Point centre, Point axis) {
    double reach = 0;
    for (Point p : points()) {
      Point d = p.minus(centre);
      reach = Math.max(reach, Math.abs(d.dot(axis)) + Math.abs(d.dot(axis.left())));
    }
    double corner = step(reach + CLEAR * Math.sqrt(2));
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      corners.add(centre.plus(axis.turned(i * Math.PI / 2).times(corner)));
    }
    return Outline.of(corners);
  }

  /** A circle about {@code centre}. */
  Outline round(Point centre) {
    double reach = 0;
    for (Point p : points()) {
      reach = Math.max(reach, p.distance(centre));
    }
    return roundEnded(centre, new Point(1, 0), 0, step(reach + CLEAR));
  }

  /** A rectangle along {@code axis}. */
  Outline upright(Point axis) {
    double[] along = extent(axis);
    double[] across = extent(axis.left());
    Point centre = middle(axis);
    Point u = axis.times(step((along[1] - along[0]) / 2 + CLEAR));
    Point v = axis.left().times(step((across[1] - across[0]) / 2 + CLEAR));
    return Outline.of(
        List.of(
            centre.minus(u).minus(v),
            centre.plus(u).minus(v),
            centre.plus(u).plus(v),
            centre.minus(u).plus(v)));
  }

  /** Two straight sides along the object's longer side and a half circle at each end. */
  Outline roundEnded() {
    Point axis = rectangle().direction();
    double[] along = extent(axis);
    double[] across = extent(axis.left());
    double radius = step((across[1] - across[0]) / 2 + CLEAR);
    return roundEnded(middle(axis), axis, (along[1] - along[0]) / 2, radius);
  }

  /** How far the object reaches from its middle along a direction, inches. */
  double half(Point way) {
    double[] along = extent(way);
    return (along[1] - along[0]) / 2;
  }

  /**
   * A rectangle along {@code u} that runs out past edges.
   *
   * @param out how far from the middle, along u and on to the left, inches; 0 to stand clear there
   * @param rounded whether an end that runs out nowhere is round, where neither side runs out
   */
  Outline runOut(Point u, double[] out, boolean rounded) {
    Point middle = middle(u);
    double[] to = new double[4];
    for (int i = 0; i < 4; i++) {
      to[i] = out[i] > 0 ? out[i] : step(half(u.turned(i * Math.PI / 2)) + CLEAR);
    }
    boolean round = rounded && out[1] == 0 && out[3] == 0;
    Point v = u.left();
    List<Vertex> vertices = new ArrayList<>();
    for (int end : new int[] {2, 0}) {
      Point way = end == 0 ? u : u.times(-1);
      Point right = v.times(end == 0 ? -to[3] : to[1]);
      Point left = v.times(end == 0 ? to[1] : -to[3]);
      if (round && out[end] == 0) {
        Point centre = middle.plus(way.times(half(u)));
        vertices.add(Vertex.arc(centre.plus(right), centre.plus(way.times(to[1]))));
        vertices.add(Vertex.at(centre.plus(left)));
      } else {
        Point far = middle.plus(way.times(to[end]));
        vertices.add(Vertex.at(far.plus(right)));
        vertices.add(Vertex.at(far.plus(left)));
      }
    }
    return new Outline(vertices);
  }

  /** The object's enclosing rectangle. */
  EnclosingRectangle rectangle() {
    return EnclosingRectangle.of(object);
  }

  private static Outline roundEnded(Point centre, Point axis, double half, double radius) {
    Point u = axis.times(half);
    Point r = axis.times(radius);
    Point v = axis.left().times(radius);
    Point right = centre.plus(u);
    Point left = centre.minus(u);
    if (half == 0) {
      return new Outline(
          List.of(
              Vertex.arc(centre.minus(v), centre.plus(r)),
              Vertex.arc(centre.plus(v), centre.minus(r))));
    }
    return new Outline(
        List.of(
            Vertex.arc(right.minus(v), right.plus(r)),
            Vertex.at(right.plus(v)),
            Vertex.arc(left.plus(v), left.minus(r)),
            Vertex.at(left.minus(v))));
  }

  /** How far the object reaches along a direction, from and to. */
  private double[] extent(Point u) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Point p : points()) {
      low = Math.min(low, p.dot(u));
      high = Math.max(high, p.dot(u));
    }
    return new double[] {low, high};
  }

  /** The whole inch, or ten millimetres, nearest to a distance. */
  double near(double inches) {
    double step = metric ? 10 / 25.4 : 1;
    return Math.rint(inches / step) * step;
  }

  /** Whole inches, so that the form is easily cut. */
  private double step(double inches) {
    double step = metric ? 10 / 25.4 : 1;
    return Math.ceil(inches / step - 1e-6) * step;
  }
}
