package org.jointwright.proof.build;

import java.util.Collection;
import java.util.Optional;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** What a tape laid along a line finds. */
final class Along {
  /** Points this near to an arc are on it; inches. */
  private static final double NEAR = 0.5;

  private Along() {}

  /** The point at a distance along a path, or past its end in the direction that it ends in. */
  static Point point(Path path, double distance) {
    double left = distance;
    for (Edge e : path.edges()) {
      if (left <= e.length() + 1e-9) {
        return e.at(e.length() > 0 ? Math.clamp(left / e.length(), 0, 1) : 0);
      }
      left -= e.length();
    }
    Edge last = path.edges().getLast();
    return last.end().plus(last.direction(1).times(left));
  }

  /** How far along a path the point of it nearest to {@code p} is. */
  static double distance(Path path, Point p) {
    double before = 0;
    double best = 0;
    double near = Double.MAX_VALUE;
    for (Edge e : path.edges()) {
      double t = e.nearest(p);
      double d = e.at(t).distance(p);
      if (d < near) {
        near = d;
        best = before + t * e.length();
      }
      before += e.length();
    }
    return best;
  }

  /** The part of a side between two points of it; a straight line where no arc has both. */
  static Path part(Collection<Path> sides, Point a, Point b) {
    Optional<Arc> arc =
        sides.stream()
            .filter(s -> s.edges().size() == 1)
            .map(s -> s.edges().getFirst())
            .filter(Arc.class::isInstance)
            .map(Arc.class::cast)
            .filter(c -> c.distance(a) < NEAR && c.distance(b) < NEAR)
            .findFirst();
    if (arc.isEmpty() || arc.get().nearest(a) == arc.get().nearest(b)) {
      return Path.straight(a, b);
    }
    double t = arc.get().nearest(a);
    double u = arc.get().nearest(b);
    Arc c = arc.get();
    return Path.of(t < u ? c.part(t, u) : c.reversed().part(1 - t, 1 - u));
  }
}
