package org.jointwright.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The enclosing rectangle of least area; among those within 0.5 % of the least, the squarest (the
 * way the rules measure a panel).
 *
 * @param longSide its longer side, inches
 * @param shortSide its shorter side, inches
 * @param direction the unit vector along its longer side
 */
public record EnclosingRectangle(double longSide, double shortSide, Point direction) {
  /** How far above the least area a rectangle still ties with it. */
  private static final double TIE = 1.005;

  /** The rectangle round a ring. */
  public static EnclosingRectangle of(Ring ring) {
    return of(Hull.of(ring));
  }

  /** The rectangle round a hull; one with no area is refused. */
  public static EnclosingRectangle of(Hull hull) {
    // The least is found first and the squarest then: a running comparison would depend on order.
    return tied(hull).stream()
        .min(Comparator.comparingDouble(EnclosingRectangle::aspect))
        .orElseThrow(() -> new IllegalArgumentException("no rectangle round " + hull));
  }

  /** The rectangles flush with a side of a hull whose area is within 0.5 % of the least. */
  public static List<EnclosingRectangle> tied(Hull hull) {
    List<EnclosingRectangle> tried = new ArrayList<>();
    List<Point> points = hull.points();
    for (int i = 0; i < points.size(); i++) {
      Point along = points.get((i + 1) % points.size()).minus(points.get(i));
      if (along.norm() > 0) {
        tried.add(flush(points, along.unit()));
      }
    }
    double least =
        tried.stream().mapToDouble(EnclosingRectangle::area).min().orElse(Double.POSITIVE_INFINITY);
    return tried.stream().filter(r -> r.area() <= least * TIE).toList();
  }

  private static EnclosingRectangle flush(List<Point> points, Point u) {
    Point v = u.left();
    double minU = Double.POSITIVE_INFINITY;
    double maxU = Double.NEGATIVE_INFINITY;
    double minV = Double.POSITIVE_INFINITY;
    double maxV = Double.NEGATIVE_INFINITY;
    for (Point p : points) {
      minU = Math.min(minU, p.dot(u));
      maxU = Math.max(maxU, p.dot(u));
      minV = Math.min(minV, p.dot(v));
      maxV = Math.max(maxV, p.dot(v));
    }
    double lengthU = maxU - minU;
    double lengthV = maxV - minV;
    return lengthU >= lengthV
        ? new EnclosingRectangle(lengthU, lengthV, u)
        : new EnclosingRectangle(lengthV, lengthU, v);
  }

  /** Its area, square inches. */
  public double area() {
    return longSide * shortSide;
  }

  /** The longer side over the shorter, at least 1. */
  public double aspect() {
    return shortSide == 0 ? Double.POSITIVE_INFINITY : longSide / shortSide;
  }
}
