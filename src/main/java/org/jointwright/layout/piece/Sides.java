package org.jointwright.layout.piece;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * What the edges of a slab say of directions, the same for every draft of it.
 *
 * @param areSquare whether all that give a direction run along one pair of axes, and none is a bow
 * @param directions those of its long straight edges, in order
 */
record Sides(boolean areSquare, List<Point> directions) {
  /** Shorter edges give no direction, inches. */
  private static final double LONG = 36;

  private static final double NEARLY = Math.sin(Math.toRadians(3));

  private static final double HAIR = 1e-6;

  static Sides of(Ground ground) {
    boolean square = ground.axes().size() <= 1;
    List<Point> directions = new ArrayList<>();
    for (Loop loop : ground.loops()) {
      for (Edge e : loop.edges()) {
        square = square && !Company.isAside(e, ground.axes().getFirst(), LONG);
        if (e instanceof Segment s && s.length() > LONG) {
          directions.add(s.direction(0));
        }
      }
    }
    return new Sides(square, List.copyOf(directions));
  }

  /** Whether a direction lies between those of two sides that are not quite parallel. */
  boolean holdBetween(Point u) {
    double most = 0;
    double least = 0;
    for (Point d : directions) {
      Point along = Math.abs(u.dot(d)) > Math.abs(u.cross(d)) ? d : d.left();
      double off = u.cross(along) * Math.signum(u.dot(along));
      if (Math.abs(off) < NEARLY) {
        most = Math.max(most, off);
        least = Math.min(least, off);
      }
    }
    return most > HAIR && least < -HAIR;
  }
}
