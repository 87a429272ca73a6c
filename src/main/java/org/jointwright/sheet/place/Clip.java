package org.jointwright.sheet.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.shape.Box;
import org.jointwright.shape.Chords;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** What lies within an upright box of the page. */
public final class Clip {
  /** Shorter pieces are not worth a line, millimetres. */
  private static final double LEAST = 0.02;

  private Clip() {}

  /** The lines and areas of a drawing that lie in a box, cut where they leave it. */
  public static List<Mark> lines(List<Mark> marks, Box box) {
    List<Mark> within = new ArrayList<>();
    for (Mark mark : marks) {
      switch (mark) {
        case Mark.Line line ->
            paths(line.path(), box)
                .forEach(
                    p -> within.add(new Mark.Line(p, line.width(), line.dashes(), line.role())));
        case Mark.Area area -> {
          List<Ring> rings = area.rings().stream().flatMap(r -> ring(r, box).stream()).toList();
          if (!rings.isEmpty()) {
            within.add(new Mark.Area(rings, area.role()));
          }
        }
        case Mark.Words words -> {
          if (box.holds(words.at())) {
            within.add(words);
          }
        }
        case Mark.Group group ->
            within.add(new Mark.Group(group.name(), group.title(), lines(group.marks(), box)));
      }
    }
    return within;
  }

  /** What of a ring lies in a box; where that is in pieces, they hang together along its sides. */
  static Optional<Ring> ring(Ring ring, Box box) {
    if (box.with(ring.box()).equals(box)) {
      return Optional.of(ring);
    }
    List<Point> points = Chords.round(ring, LEAST);
    points = inside(points, p -> p.x() - box.minX());
    points = inside(points, p -> box.maxX() - p.x());
    points = inside(points, p -> p.y() - box.minY());
    points = inside(points, p -> box.maxY() - p.y());
    return points.size() < 3 ? Optional.empty() : Optional.of(Ring.of(points));
  }

  /** What lies on the near side of a line: where {@code off} it is not negative. */
  private static List<Point> inside(List<Point> points, ToDoubleFunction<Point> off) {
    List<Point> kept = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Point from = points.get(i);
      Point to = points.get((i + 1) % points.size());
      double a = off.applyAsDouble(from);
      double b = off.applyAsDouble(to);
      if (a >= 0) {
        kept.add(from);
      }
      if (a >= 0 != b >= 0) {
        kept.add(from.towards(to, a / (a - b)));
      }
    }
    return kept;
  }

  /** The pieces of a path that lie in a box, in their order. */
  public static List<Path> paths(Path path, Box box) {
    List<Edge> sides = Rings.box(box.minX(), box.minY(), box.width(), box.height()).edges();
    List<Path> pieces = new ArrayList<>();
    List<Edge> run = new ArrayList<>();
    for (Edge edge : path.edges()) {
      TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, 1.0));
      sides.forEach(s -> Crossing.of(edge, s).forEach(c -> cuts.add(c.first())));
      double from = 0;
      for (double to : cuts) {
        if ((to - from) * edge.length() < LEAST) {
          continue;
        }
        if (box.holds(edge.at((from + to) / 2))) {
          Edge piece = from == 0 && to == 1 ? edge : edge.part(from, to);
          // What was too short to be drawn leaves a gap that nobody sees, but a path may have none.
          if (!run.isEmpty() && !run.getLast().end().equals(piece.start())) {
            end(run, pieces);
          }
          run.add(piece);
        } else {
          end(run, pieces);
        }
        from = to;
      }
    }
    end(run, pieces);
    return pieces;
  }

  private static void end(List<Edge> run, List<Path> pieces) {
    if (!run.isEmpty()) {
      pieces.add(new Path(run));
      run.clear();
    }
  }
}
