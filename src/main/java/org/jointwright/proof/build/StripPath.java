package org.jointwright.proof.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.proof.read.Reading.Way;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Finds where filler lies. */
record StripPath(Rebuilt rebuilt) {
  /** The line it lies along; empty where a letter or a mark that it is told by is unknown. */
  Optional<Path> of(Way way) {
    return switch (way) {
      case Way.Along along -> along(along.letters());
      case Way.Between between -> {
        Optional<Point> a = rebuilt.point(between.from());
        Optional<Point> b = rebuilt.point(between.to());
        yield a.isPresent() && b.isPresent()
            ? Optional.of(Along.part(rebuilt.sides().values(), a.get(), b.get()))
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
    return Along.part(rebuilt.sides().values(), from, to);
  }
}
