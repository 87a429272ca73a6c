package org.jointwright.layout;

import org.jointwright.shape.Arc;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * Where a slab is laid: near the origin, on figures rounded far finer than any tape, so that where
 * it stands in the plan cannot tip a tie one way or the other.
 *
 * @param origin the plan's point that is the bench's origin
 */
record Bench(Point origin) {
  /** Figures on the bench are whole numbers of this, inches. */
  private static final double GRAIN = 1e-7;

  /** The bench for what that box holds. */
  static Bench at(Box box) {
    return new Bench(new Point(box.minX(), box.minY()));
  }

  Point in(Point p) {
    return new Point(
        Math.rint((p.x() - origin.x()) / GRAIN) * GRAIN,
        Math.rint((p.y() - origin.y()) / GRAIN) * GRAIN);
  }

  Point out(Point p) {
    return p.plus(origin);
  }

  Edge in(Edge edge) {
    return switch (edge) {
      case Segment s -> new Segment(in(s.start()), in(s.end()));
      // Through its middle, so that ends and radius still agree.
      case Arc a -> Arc.through(in(a.start()), in(a.at(0.5)), in(a.end()));
    };
  }

  Edge out(Edge edge) {
    return switch (edge) {
      case Segment s -> new Segment(out(s.start()), out(s.end()));
      case Arc a -> new Arc(out(a.start()), out(a.end()), out(a.centre()), a.sweep());
    };
  }
}
