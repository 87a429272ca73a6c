package org.jointwright.drawing;

import java.util.List;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/**
 * How the plan lies on a medium: turned, scaled, and with y down instead of up.
 *
 * @param origin where the plan's origin falls, in units of the medium
 * @param scale units of the medium for an inch of the plan
 * @param turn degrees the plan is turned counter-clockwise as seen
 */
public record View(Point origin, double scale, double turn) {
  /** Refuses a scale that is not above 0. */
  public View {
    if (!(scale > 0) || !Double.isFinite(scale)) {
      throw new IllegalArgumentException("a view's scale is above 0, not " + scale);
    }
  }

  /** Where a point of the plan falls. */
  public Point on(Point p) {
    Point t = turned(p, Math.toRadians(turn));
    return new Point(origin.x() + t.x() * scale, origin.y() - t.y() * scale);
  }

  /** The point of the plan that falls on {@code p}. */
  public Point back(Point p) {
    Point t = new Point((p.x() - origin.x()) / scale, (origin.y() - p.y()) / scale);
    return turned(t, -Math.toRadians(turn));
  }

  /** The upright box of the plan that holds all of the plan that falls in {@code medium}. */
  public Box back(Box medium) {
    if (medium.equals(Box.ALL)) {
      return medium;
    }
    Point low = new Point(medium.minX(), medium.minY());
    Point high = new Point(medium.maxX(), medium.maxY());
    return Box.of(back(low), back(high))
        .with(back(new Point(low.x(), high.y())))
        .with(back(new Point(high.x(), low.y())));
  }

  private static Point turned(Point p, double radians) {
    return radians == 0 ? p : p.turned(radians);
  }

  /** A direction of the plan as it runs on the medium, not scaled. */
  public Point heading(Point v) {
    Point t = turned(v, Math.toRadians(turn));
    return new Point(t.x(), -t.y());
  }

  /** An edge of the plan on the medium; an arc stays an arc. */
  public Edge on(Edge e) {
    return switch (e) {
      case Segment s -> new Segment(on(s.start()), on(s.end()));
      case Arc a -> new Arc(on(a.start()), on(a.end()), on(a.centre()), -a.sweep());
    };
  }

  /** A path of the plan on the medium. */
  public Path on(Path path) {
    return new Path(path.edges().stream().map(this::on).toList());
  }

  /** A ring of the plan on the medium. */
  public Ring on(Ring ring) {
    List<Edge> edges = ring.edges().stream().map(this::on).toList();
    return new Ring(edges);
  }

  /** The box round a ring of the plan, on the medium. */
  public Box boxOf(Ring ring) {
    return on(ring).box();
  }
}
