package org.jointwright.fix.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.shape.Box;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Segment;

/**
 * A region measured along a direction.
 *
 * @param region the region
 * @param along the direction, a unit vector
 * @param from where it begins along it, inches from the origin's foot
 * @param to where it ends
 */
public record Across(Region region, Point along, double from, double to) {
  private static final int SAMPLES = 8;

  /** A region measured along a direction, its arcs to a fraction of an inch. */
  public static Across of(Region region, Point along) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (Edge e : region.outer().edges()) {
      for (int i = 0; i < SAMPLES; i++) {
        double d = e.at((double) i / SAMPLES).dot(along);
        from = Math.min(from, d);
        to = Math.max(to, d);
      }
    }
    return new Across(region, along, from, to);
  }

  /** Its length that way, inches. */
  public double length() {
    return to - from;
  }

  /** Half way along it, inches from the origin's foot. */
  public double amidst() {
    return (from + to) / 2;
  }

  /**
   * A place amid it at a distance along: the middle of the widest stretch across. Empty where it
   * has none.
   */
  public Optional<Point> amid(double at) {
    Box box = region.outer().box();
    double far = box.width() + box.height();
    Point foot = box.centre();
    Point on = foot.plus(along.times(at - foot.dot(along)));
    Segment line = new Segment(on.minus(along.left().times(far)), on.plus(along.left().times(far)));
    List<Double> cuts = new ArrayList<>();
    region.outer().edges().forEach(e -> addCuts(line, e, cuts));
    region.holes().forEach(h -> h.edges().forEach(e -> addCuts(line, e, cuts)));
    cuts.sort(null);
    Optional<Point> best = Optional.empty();
    double widest = 0;
    for (int i = 1; i < cuts.size(); i++) {
      double width = cuts.get(i) - cuts.get(i - 1);
      Point middle = line.at((cuts.get(i) + cuts.get(i - 1)) / 2 / line.length());
      if (width > widest && region.contains(middle)) {
        widest = width;
        best = Optional.of(middle);
      }
    }
    return best;
  }

  private static void addCuts(Segment line, Edge edge, List<Double> cuts) {
    Crossing.of(line, edge).forEach(c -> cuts.add(c.first() * line.length()));
  }
}
