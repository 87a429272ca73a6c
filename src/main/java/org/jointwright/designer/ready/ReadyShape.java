package org.jointwright.designer.ready;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * A shape with its sizes, not yet on the plan.
 *
 * @param kind what shape
 * @param sizes its sizes in the order of the kind's, inches or degrees
 * @param turned by how much it is turned about its first corner, degrees counter-clockwise
 * @param isMirrored whether left and right are changed about
 */
public record ReadyShape(ReadyKind kind, List<Double> sizes, double turned, boolean isMirrored) {
  /** Copies the list and refuses sizes that the kind does not allow. */
  public ReadyShape {
    sizes = List.copyOf(sizes);
    if (sizes.size() != kind.sizes().size()) {
      throw new IllegalArgumentException(kind + " has no " + sizes.size() + " sizes");
    }
    for (int i = 0; i < sizes.size(); i++) {
      if (!kind.sizes().get(i).allows(sizes.get(i))) {
        throw new IllegalArgumentException(kind.sizes().get(i) + " is never " + sizes.get(i));
      }
    }
  }

  /** The shape at its usual sizes. */
  public static ReadyShape usual(ReadyKind kind, boolean isMetric) {
    return new ReadyShape(
        kind, kind.sizes().stream().map(s -> s.usual(isMetric)).toList(), 0, false);
  }

  /** The same shape with another size number {@code i}. */
  public ReadyShape with(int i, double value) {
    List<Double> changed = new ArrayList<>(sizes);
    changed.set(i, value);
    return new ReadyShape(kind, changed, turned, isMirrored);
  }

  /** The same shape turned otherwise, degrees. */
  public ReadyShape withTurned(double degrees) {
    double part = degrees % 360;
    return new ReadyShape(kind, sizes, part < 0 ? part + 360 : part, isMirrored);
  }

  /** The same shape, as in a mirror or not. */
  public ReadyShape withMirrored(boolean value) {
    return new ReadyShape(kind, sizes, turned, value);
  }

  /** Its outline with its first corner at {@code at}; empty where the sizes make none. */
  public Optional<Outline> at(Point at) {
    return drawn().map(o -> isMirrored ? mirrored(o) : o).map(o -> placed(o, at));
  }

  private Optional<Outline> drawn() {
    return switch (kind) {
      case RECTANGLE ->
          Optional.of(straight(p(0, 0), p(size(0), 0), p(size(0), size(1)), p(0, size(1))));
      case ELL -> ell();
      case FLARED -> {
        double all = size(0) + 2 * size(2);
        yield Optional.of(
            straight(p(0, 0), p(all, 0), p(size(2) + size(0), size(1)), p(size(2), size(1))));
      }
      case DRIVE -> Strip.round(curve(), size(0));
      case CIRCLE -> {
        double r = size(0) / 2;
        yield Optional.of(
            new Outline(List.of(Vertex.arc(p(-r, 0), p(0, -r)), Vertex.arc(p(r, 0), p(0, r)))));
      }
      case SECTOR -> sector();
      case WALK -> Strip.round(bend(), size(0));
    };
  }

  private Optional<Outline> ell() {
    double across = size(0);
    double low = size(1);
    double up = size(2);
    double wide = size(3);
    return low >= up || wide >= across
        ? Optional.empty()
        : Optional.of(
            straight(p(0, 0), p(across, 0), p(across, low), p(wide, low), p(wide, up), p(0, up)));
  }

  private Optional<Outline> sector() {
    double outer = size(0);
    double angle = Math.toRadians(size(1));
    double inner = size(2);
    if (inner >= outer) {
      return Optional.empty();
    }
    List<Vertex> vertices = new ArrayList<>();
    // Its first corner is the origin; of a ring that is not the middle of the circles.
    Point middle = p(-inner, 0);
    vertices.add(Vertex.at(p(0, 0)));
    vertices.add(Vertex.arc(p(outer - inner, 0), middle.plus(round(outer, angle / 2))));
    vertices.add(Vertex.at(middle.plus(round(outer, angle))));
    if (inner > 0) {
      vertices.add(
          Vertex.arc(middle.plus(round(inner, angle)), middle.plus(round(inner, angle / 2))));
    }
    return Optional.of(new Outline(vertices));
  }

  /** Up, round to the left, and on; the left corner of its beginning is the origin. */
  private Path curve() {
    double radius = size(2);
    double turn = Math.toRadians(size(3));
    Point start = p(size(0) / 2, 0);
    Point bend = start.plus(p(0, size(1)));
    Point centre = bend.plus(p(-radius, 0));
    Point out = centre.plus(round(radius, turn));
    List<Edge> edges = new ArrayList<>();
    if (size(1) > 0) {
      edges.add(new Segment(start, bend));
    }
    edges.add(new Arc(bend, out, centre, turn));
    if (size(4) > 0) {
      edges.add(new Segment(out, out.plus(way(turn).times(size(4)))));
    }
    return new Path(edges);
  }

  private Path bend() {
    Point start = p(size(0) / 2, 0);
    Point bend = start.plus(p(0, size(1)));
    return size(3) > 0 && size(2) > 0
        ? Path.through(List.of(start, bend, bend.plus(way(Math.toRadians(size(2))).times(size(3)))))
        : Path.straight(start, bend.plus(p(0, size(3))));
  }

  /** Upwards, turned to the left. A square turn is exact. */
  private static Point way(double turn) {
    return turn == Math.PI / 2 ? p(-1, 0) : p(0, 1).turned(turn);
  }

  private static Point round(double radius, double angle) {
    return angle == Math.PI / 2 ? p(0, radius) : p(radius, 0).turned(angle);
  }

  private double size(int i) {
    return sizes.get(i);
  }

  private static Outline straight(Point... corners) {
    return Outline.of(List.of(corners));
  }

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  /** Left and right changed about; run the other way, so that it stays counter-clockwise. */
  private static Outline mirrored(Outline outline) {
    List<Edge> edges = outline.ring().edges().reversed();
    return new Outline(
        edges.stream()
            .map(
                e ->
                    e instanceof Segment
                        ? Vertex.at(across(e.end()))
                        : Vertex.arc(across(e.end()), across(e.at(0.5))))
            .toList());
  }

  private static Point across(Point p) {
    return new Point(-p.x(), p.y());
  }

  private Outline placed(Outline outline, Point at) {
    return new Outline(
        outline.vertices().stream()
            .map(v -> v.moved(turned(v.at()).plus(at), v.via().map(m -> turned(m).plus(at))))
            .toList());
  }

  /** Quarter turns are exact, so that figures typed come back as they were. */
  private Point turned(Point p) {
    if (turned == 0) {
      return p;
    }
    if (turned == 90) {
      return p.left();
    }
    if (turned == 180) {
      return p.times(-1);
    }
    return turned == 270 ? p.left().times(-1) : p.turned(Math.toRadians(turned));
  }
}
