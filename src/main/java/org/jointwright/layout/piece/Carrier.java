package org.jointwright.layout.piece;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Mirror;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** The endless line, bent line or full circle that a joint runs along. */
public sealed interface Carrier permits Carrier.Line, Carrier.Circle, Bent {
  /** The place of the point of this carrier nearest to {@code p}. */
  double place(Point p);

  /** The point at a place. */
  Point at(double place);

  /** The unit direction towards growing places. */
  Point direction(double place);

  /** How much a place grows over one inch. */
  double perInch();

  /** The edge from {@code from} to {@code to}, towards growing places. */
  Edge edge(Point from, Point to);

  /** Where it crosses or touches {@code edge}. */
  List<Crossing> crossings(Edge edge);

  /** This carrier moved by {@code inches} to its left (a line) or outwards (a circle). */
  Carrier shifted(double inches);

  /** Its mirror image; its places may run the other way. */
  Carrier mirrored(Mirror mirror);

  /** How far {@code p} lies off this carrier, inches. */
  default double distance(Point p) {
    return at(place(p)).distance(p);
  }

  /**
   * A crossing with an edge.
   *
   * @param place where on the carrier
   * @param share where on the edge, 0 to 1
   */
  record Crossing(double place, double share) {}

  /** How near to an edge's end a crossing must be to count as its end, inches. */
  double END = 0.02;

  /**
   * A straight line.
   *
   * @param origin the point at place 0
   * @param unit its direction
   */
  record Line(Point origin, Point unit) implements Carrier {
    /** The line through two points that differ. */
    public static Line through(Point a, Point b) {
      return new Line(a, b.minus(a).unit());
    }

    @Override
    public double place(Point p) {
      return (p.x() - origin.x()) * unit.x() + (p.y() - origin.y()) * unit.y();
    }

    @Override
    public Point at(double place) {
      return new Point(origin.x() + place * unit.x(), origin.y() + place * unit.y());
    }

    @Override
    public Point direction(double place) {
      return unit;
    }

    @Override
    public double perInch() {
      return 1;
    }

    @Override
    public Edge edge(Point from, Point to) {
      return new Segment(from, to);
    }

    @Override
    public Line shifted(double inches) {
      return new Line(origin.plus(unit.left().times(inches)), unit);
    }

    @Override
    public Line mirrored(Mirror mirror) {
      return new Line(mirror.of(origin), mirror.turned(unit));
    }

    private double offset(Point p) {
      return unit.x() * (p.y() - origin.y()) - unit.y() * (p.x() - origin.x());
    }

    @Override
    public List<Crossing> crossings(Edge edge) {
      return switch (edge) {
        case Segment s -> withSegment(s);
        case Arc a -> withArc(a);
      };
    }

    private List<Crossing> withSegment(Segment s) {
      double a = offset(s.start());
      double b = offset(s.end());
      boolean atStart = Math.abs(a) <= END;
      boolean atEnd = Math.abs(b) <= END;
      if (atStart && atEnd) {
        return List.of(new Crossing(place(s.start()), 0), new Crossing(place(s.end()), 1));
      }
      if (atStart) {
        return List.of(new Crossing(place(s.start()), 0));
      }
      if (atEnd) {
        return List.of(new Crossing(place(s.end()), 1));
      }
      if (a > 0 == b > 0) {
        return List.of();
      }
      double share = a / (a - b);
      double length = s.length();
      if (share * length < END) {
        return List.of(new Crossing(place(s.start()), 0));
      }
      if ((1 - share) * length < END) {
        return List.of(new Crossing(place(s.end()), 1));
      }
      return List.of(new Crossing(place(s.at(share)), share));
    }

    private List<Crossing> withArc(Arc arc) {
      double across = offset(arc.centre());
      double r = arc.radius();
      if (Math.abs(across) > r + END) {
        return List.of();
      }
      double half = Math.sqrt(Math.max(0, r * r - across * across));
      double middle = place(arc.centre());
      List<Crossing> found = new ArrayList<>(2);
      ArcEnds.add(found, this, arc, at(middle - half));
      if (half > END) {
        ArcEnds.add(found, this, arc, at(middle + half));
      }
      return found;
    }
  }

  /**
   * A circle; places are radians counter-clockwise, in (-pi, pi].
   *
   * @param centre its middle
   * @param radius in inches
   */
  record Circle(Point centre, double radius) implements Carrier {
    @Override
    public double place(Point p) {
      return Math.atan2(p.y() - centre.y(), p.x() - centre.x());
    }

    @Override
    public Point at(double place) {
      return new Point(
          centre.x() + radius * Math.cos(place), centre.y() + radius * Math.sin(place));
    }

    @Override
    public Point direction(double place) {
      return new Point(-Math.sin(place), Math.cos(place));
    }

    @Override
    public double perInch() {
      return 1 / radius;
    }

    @Override
    public Edge edge(Point from, Point to) {
      double sweep = place(to) - place(from);
      if (sweep <= 1e-9) {
        sweep += 2 * Math.PI;
      }
      return new Arc(from, to, centre, Math.min(sweep, 2 * Math.PI - 1e-9));
    }

    @Override
    public Circle shifted(double inches) {
      return new Circle(centre, Math.max(1, radius + inches));
    }

    @Override
    public Circle mirrored(Mirror mirror) {
      return new Circle(mirror.of(centre), radius);
    }

    @Override
    public List<Crossing> crossings(Edge edge) {
      return switch (edge) {
        case Segment s -> withSegment(s);
        case Arc a -> withArc(a);
      };
    }

    private List<Crossing> withSegment(Segment s) {
      double length = s.length();
      if (length == 0) {
        return List.of();
      }
      Point along = s.direction(0);
      Point to = centre.minus(s.start());
      double across = along.cross(to);
      if (Math.abs(across) > radius) {
        return List.of();
      }
      double half = Math.sqrt(radius * radius - across * across);
      List<Crossing> found = new ArrayList<>(2);
      for (double d : new double[] {along.dot(to) - half, along.dot(to) + half}) {
        if (d > -END && d < length + END) {
          double share = d < END ? 0 : d > length - END ? 1 : d / length;
          found.add(new Crossing(place(s.at(share)), share));
        }
      }
      return found;
    }

    private List<Crossing> withArc(Arc arc) {
      Point to = arc.centre().minus(centre);
      double apart = to.norm();
      double r = arc.radius();
      if (apart < 0.05 || apart > r + radius || apart < Math.abs(r - radius)) {
        return List.of();
      }
      double x = (apart * apart + radius * radius - r * r) / (2 * apart);
      double y = Math.sqrt(Math.max(0, radius * radius - x * x));
      Point u = to.times(1 / apart);
      Point foot = centre.plus(u.times(x));
      List<Crossing> found = new ArrayList<>(2);
      ArcEnds.add(found, this, arc, foot.plus(u.left().times(y)));
      ArcEnds.add(found, this, arc, foot.minus(u.left().times(y)));
      return found;
    }
  }
}
