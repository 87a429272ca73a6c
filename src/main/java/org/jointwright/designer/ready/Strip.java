package org.jointwright.designer.ready;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** A strip of even width about a middle line, as a drive or a walk is. */
public final class Strip {
  /** Sides that end nearer to each other than this run on into each other, inches. */
  private static final double SAME = 1e-6;

  /** Farther from the middle line than so many half widths no corner of it stands. */
  private static final double SHARPEST = 6;

  private Strip() {}

  /**
   * The outline of the strip, counter-clockwise; at bends of the middle line its sides meet in a
   * corner. Empty where it cannot be so wide: a bend has less room on its inside, or is too sharp.
   *
   * @param middle the middle line, open
   * @param width how wide, inches, above 0
   */
  public static Optional<Outline> round(Path middle, double width) {
    Optional<List<Edge>> right = side(middle.edges(), -width / 2);
    Optional<List<Edge>> left = side(middle.edges(), width / 2);
    if (right.isEmpty() || left.isEmpty()) {
      return Optional.empty();
    }
    List<Vertex> vertices = new ArrayList<>();
    right.get().forEach(e -> vertices.add(vertex(e)));
    vertices.add(Vertex.at(right.get().getLast().end()));
    left.get().reversed().forEach(e -> vertices.add(vertex(e.reversed())));
    vertices.add(Vertex.at(left.get().getFirst().start()));
    return Optional.of(new Outline(vertices));
  }

  private static Vertex vertex(Edge e) {
    return e instanceof Segment ? Vertex.at(e.start()) : Vertex.arc(e.start(), e.at(0.5));
  }

  /** One side of the strip, so far to the left of the middle line. */
  private static Optional<List<Edge>> side(List<Edge> middle, double off) {
    List<Edge> sides = new ArrayList<>();
    for (Edge e : middle) {
      Optional<Edge> beside = beside(e, off);
      if (beside.isEmpty()) {
        return Optional.empty();
      }
      sides.add(beside.get());
    }
    for (int i = 1; i < sides.size(); i++) {
      Edge before = sides.get(i - 1);
      Edge after = sides.get(i);
      Optional<Point> corner = corner(before, after, middle.get(i).start(), Math.abs(off));
      if (corner.isEmpty()) {
        return Optional.empty();
      }
      sides.set(i - 1, between(before, before.start(), corner.get()));
      sides.set(i, between(after, corner.get(), after.end()));
    }
    boolean runsOn = true;
    for (int i = 0; i < sides.size(); i++) {
      Edge e = sides.get(i);
      runsOn &= e.length() > SAME && e.direction(0.5).dot(middle.get(i).direction(0.5)) > 0;
    }
    return runsOn ? Optional.of(sides) : Optional.empty();
  }

  private static Optional<Edge> beside(Edge e, double off) {
    return switch (e) {
      case Segment s -> {
        Point by = s.direction(0).left().times(off);
        yield Optional.of(new Segment(s.start().plus(by), s.end().plus(by)));
      }
      case Arc a -> {
        double radius = a.sweep() > 0 ? a.radius() - off : a.radius() + off;
        yield radius <= SAME
            ? Optional.empty()
            : Optional.of(
                new Arc(out(a, a.start(), radius), out(a, a.end(), radius), a.centre(), a.sweep()));
      }
    };
  }

  private static Point out(Arc a, Point p, double radius) {
    return a.centre().plus(p.minus(a.centre()).unit().times(radius));
  }

  /** Where two sides meet that were one at {@code bend} of the middle line. */
  private static Optional<Point> corner(Edge before, Edge after, Point bend, double off) {
    if (before.end().distance(after.start()) <= SAME) {
      return Optional.of(before.end());
    }
    double reach = SHARPEST * off;
    Point near = before.end().towards(after.start(), 0.5);
    return Crossing.of(longer(before, reach, true), longer(after, reach, false)).stream()
        .map(Crossing::at)
        .filter(p -> p.distance(bend) <= reach)
        .min(Comparator.comparingDouble(p -> p.distance(near)));
  }

  /** An edge run on beyond its end, or back beyond its start. */
  private static Edge longer(Edge e, double by, boolean atEnd) {
    return switch (e) {
      case Segment s -> {
        Point way = s.direction(0).times(by);
        yield atEnd
            ? new Segment(s.start(), s.end().plus(way))
            : new Segment(s.start().minus(way), s.end());
      }
      case Arc a -> {
        double room = (2 * Math.PI - Math.abs(a.sweep())) * 0.9;
        double more = Math.min(room, by / a.radius()) * Math.signum(a.sweep());
        Point about = a.centre();
        yield atEnd
            ? new Arc(
                a.start(), about.plus(a.end().minus(about).turned(more)), about, a.sweep() + more)
            : new Arc(
                about.plus(a.start().minus(about).turned(-more)), a.end(), about, a.sweep() + more);
      }
    };
  }

  /** The same line from one point of it to another. */
  private static Edge between(Edge e, Point from, Point to) {
    return switch (e) {
      case Segment s -> new Segment(from, to);
      case Arc a -> {
        double sweep = a.sweep() - angle(a, a.start(), from) + angle(a, a.end(), to);
        yield new Arc(from, to, a.centre(), sweep);
      }
    };
  }

  /** The signed angle from one point of a circle to another near it. */
  private static double angle(Arc a, Point from, Point to) {
    Point one = from.minus(a.centre());
    Point two = to.minus(a.centre());
    return Math.atan2(one.cross(two), one.dot(two));
  }
}
