package org.jointwright.designer.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * An outline, or a line, that is being drawn.
 *
 * @param what what it becomes
 * @param placed its vertices so far
 * @param pencil where the pencil stands, once it was seen
 * @param typing the sentence typed so far for the next edge
 * @param wide how wide a strip it becomes, inches; 0 where it becomes none
 */
public record Draft(
    Drawn what, List<Vertex> placed, Optional<Pencil> pencil, Typing typing, double wide) {
  /** A walk for two, inches; common practice, no source. */
  private static final double WALK = 48;

  /** The same as a crew that measures in metres sets it out: 1.2 m (common practice, no source). */
  private static final double METRIC_WALK = 1.2 / 0.0254;

  /** Nothing drawn yet. */
  public static final Draft EMPTY = begun(Drawn.SLAB);

  /** A slab's outline. */
  public Draft(List<Vertex> placed, Optional<Pencil> pencil, String typed) {
    this(Drawn.SLAB, placed, pencil, typed, 0);
  }

  /** A draft with the caret behind its sentence. */
  public Draft(
      Drawn what, List<Vertex> placed, Optional<Pencil> pencil, String typed, double wide) {
    this(what, placed, pencil, Typing.of(typed), wide);
  }

  /** Nothing drawn yet of what it will be, on a plan in feet. */
  public static Draft begun(Drawn what) {
    return begun(what, false);
  }

  /** Nothing drawn yet of what it will be; a strip is as wide as walks are in the measures used. */
  public static Draft begun(Drawn what, boolean isMetric) {
    double walk = isMetric ? METRIC_WALK : WALK;
    double wide = what == Drawn.STRIP ? walk : 0;
    return new Draft(what, List.of(), Optional.empty(), "", wide);
  }

  /** Copies the list. */
  public Draft {
    placed = List.copyOf(placed);
  }

  /** The text of the sentence. */
  public String typed() {
    return typing.text();
  }

  /** The first corner. */
  public Optional<Point> first() {
    return placed.isEmpty() ? Optional.empty() : Optional.of(placed.getFirst().at());
  }

  /** The corner that the next edge leaves. */
  public Optional<Point> last() {
    return placed.isEmpty() ? Optional.empty() : Optional.of(placed.getLast().at());
  }

  /** The edges so far. */
  public List<Edge> edges() {
    List<Edge> edges = new ArrayList<>();
    for (int i = 1; i < placed.size(); i++) {
      edges.add(placed.get(i - 1).edgeTo(placed.get(i).at()));
    }
    return edges;
  }

  /** The way the last edge runs where it ends. */
  public Optional<Point> heading() {
    List<Edge> edges = edges();
    return edges.isEmpty() ? Optional.empty() : Optional.of(edges.getLast().direction(1));
  }

  /** Whether an edge back to the first corner would make an outline. */
  public boolean canClose() {
    return !what.isLine()
        && (placed.size() >= 3 || (placed.size() == 2 && placed.getFirst().via().isPresent()));
  }

  /** This draft with the pencil elsewhere. */
  public Draft withPencil(Pencil value) {
    return new Draft(what, placed, Optional.of(value), typing, wide);
  }

  /** This draft with another sentence. */
  public Draft withTyped(String value) {
    return with(Typing.of(value));
  }

  /** This draft with its sentence edited. */
  public Draft with(Typing value) {
    return new Draft(what, placed, pencil, value, wide);
  }

  /** This draft of a strip so wide, inches. */
  public Draft withWide(double value) {
    return new Draft(what, placed, pencil, typing, value);
  }

  /** The line so far, as the middle of a strip; empty where nothing has a length yet. */
  public Optional<Path> line() {
    List<Edge> edges = edges();
    return edges.isEmpty() ? Optional.empty() : Optional.of(new Path(edges));
  }

  /** This draft begun at {@code corner}. */
  public Draft begunAt(Point corner) {
    return new Draft(what, List.of(Vertex.at(corner)), pencil, typing, wide);
  }

  /** This draft with an edge more, which does not close it; the sentence is used up. */
  public Draft placed(Stroke stroke) {
    List<Vertex> vertices = new ArrayList<>(placed);
    if (vertices.isEmpty()) {
      vertices.add(stroke.vertex());
    } else {
      vertices.set(vertices.size() - 1, stroke.vertex());
    }
    vertices.add(Vertex.at(stroke.to()));
    return new Draft(what, vertices, Optional.empty(), "", wide);
  }

  /** One step back: the sentence first, then the last corner; empty when nothing is left. */
  public Optional<Draft> back() {
    if (!typed().isEmpty()) {
      return Optional.of(withTyped(""));
    }
    if (placed.isEmpty()) {
      return Optional.empty();
    }
    List<Vertex> fewer = new ArrayList<>(placed.subList(0, placed.size() - 1));
    if (!fewer.isEmpty()) {
      Vertex end = fewer.getLast();
      fewer.set(fewer.size() - 1, Vertex.at(end.at()));
    }
    return Optional.of(new Draft(what, fewer, pencil, "", wide));
  }

  /** The outline closed by {@code stroke}, counter-clockwise. */
  public Outline closed(Stroke stroke) {
    List<Vertex> vertices = new ArrayList<>(placed);
    vertices.set(vertices.size() - 1, stroke.vertex());
    Outline outline = new Outline(vertices);
    return outline.ring().signedArea() < 0 ? turned(outline) : outline;
  }

  private static Outline turned(Outline outline) {
    Ring ring = outline.ring().reversed();
    List<Vertex> vertices = new ArrayList<>();
    for (Edge e : ring.edges()) {
      vertices.add(e.turn() == 0 ? Vertex.at(e.start()) : Vertex.arc(e.start(), e.at(0.5)));
    }
    return new Outline(vertices);
  }

  /** Whether the outline so far turns clockwise, the next corner at {@code next}. */
  public boolean isClockwise(Point next) {
    List<Point> points = new ArrayList<>(placed.stream().map(Vertex::at).toList());
    points.add(next);
    double twice = 0;
    for (int i = 0; i < points.size(); i++) {
      twice += points.get(i).cross(points.get((i + 1) % points.size()));
    }
    return twice < -1e-6;
  }
}
