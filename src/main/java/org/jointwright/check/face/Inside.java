package org.jointwright.check.face;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Box;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/** A point inside a region to point at. */
final class Inside {
  private Inside() {}

  /** The middle of the widest stretch at half its height. */
  static Point of(Region region) {
    Box box = region.outer().box();
    double y = box.centre().y();
    Segment across = new Segment(new Point(box.minX() - 1, y), new Point(box.maxX() + 1, y));
    List<Double> crossings = new ArrayList<>();
    addCrossings(region.outer(), across, crossings);
    region.holes().forEach(h -> addCrossings(h, across, crossings));
    crossings.sort(null);
    Point best = region.outer().edges().getFirst().at(0.5);
    double widest = 0;
    for (int i = 1; i < crossings.size(); i++) {
      double gap = crossings.get(i) - crossings.get(i - 1);
      Point middle = new Point((crossings.get(i) + crossings.get(i - 1)) / 2, y);
      if (gap > widest && region.contains(middle)) {
        widest = gap;
        best = middle;
      }
    }
    return best;
  }

  private static void addCrossings(Ring ring, Segment across, List<Double> into) {
    for (Edge e : ring.edges()) {
      for (Crossing c : Crossing.of(across, e)) {
        into.add(c.at().x());
      }
    }
  }
}
