package org.jointwright.proof.build;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jointwright.proof.read.Reading.Way;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Finds where filler lies. */
record StripPath(Rebuilt rebuilt) {
  /** Points this near to an arc are on it; inches. */
  private static final double NEAR = 0.5;

  /** The line it lies along; empty where a letter or a mark that it is told by is unknown. */
  Optional<Path> of(Way way) {
    return switch (way) {
      case Way.Along along -> along(along.letters());
      case Way.Between between -> {
        Optional<Point> a = rebuilt.point(between.from());
        Optional<Point> b = rebuilt.point(between.to());
        yield a.isPresent() && b.isPresent()
            ? Optional.of(part(rebuilt.sides().values(), a.get(), b.get()))
            : Optional.empty();
      }
      case Way.Round round -> Optional.empty();
    };
  }

  private Optional<Path> along(List<String> letters) {
    if (!rebuilt.corners().keySet().containsAll(letters)) {
      return Optional.empty();
    }
    List<Edge> edges = new ArrayList<>();
    for (int i = 1; i < letters.size(); i++) {
      List<Edge> next = between(letters.get(i - 1), letters.get(i)).edges();
      if (!edges.isEmpty() && !edges.getLast().end().equals(next.getFirst().start())) {
        edges.add(new Segment(edges.getLast().end(), next.getFirst().start()));
      }
      edges.addAll(next);
    }
    return Optional.of(new Path(edges));
  }

  private Path between(String a, String b) {
    Path there = rebuilt.sides().get(a + "–" + b);
    if (there != null) {
      return there;
    }
    Path back = rebuilt.sides().get(b + "–" + a);
    if (back != null) {
      return new Path(back.edges().reversed().stream().map(Edge::reversed).toList());
    }
    Point from = java.util.Objects.requireNonNull(rebuilt.corners().get(a));
    Point to = java.util.Objects.requireNonNull(rebuilt.corners().get(b));
    return part(rebuilt.sides().values(), from, to);
  }

  /** The part of a side between two points of it; a straight line where no arc has both. */
  private static Path part(Collection<Path> sides, Point a, Point b) {
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
