package org.jointwright.check.along;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jointwright.check.along.Stretches.Stretch;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** The stretches of a path that lie on other lines, within the tolerance on lengths. */
public final class Alongside {
  private static final double NEAR = Tolerance.LENGTH_INCHES;

  /** Lines that cross more steeply lie on each other for less than any limit: the sine. */
  private static final double STEEP = 0.5;

  /** Shorter edges may lie near a line that they cross steeply, inches. */
  private static final double SHORT = 6;

  private Alongside() {}

  /** The stretches of {@code path} that lie on one of the lines, those excepted that are so. */
  public static List<Stretch> of(Path path, List<Edge> lines, Predicate<Point> excepted) {
    List<Stretch> found = new ArrayList<>();
    for (Edge e : path.edges()) {
      List<Edge> near = lines.stream().filter(line -> mayLieOn(e, line)).toList();
      if (!near.isEmpty()) {
        found.addAll(
            Stretches.of(
                e,
                p ->
                    near.stream().anyMatch(line -> Nearness.isBeside(line, p, NEAR))
                        && !excepted.test(p)));
      }
    }
    return found;
  }

  private static boolean mayLieOn(Edge edge, Edge line) {
    if (!edge.box().grown(NEAR).meets(line.box())) {
      return false;
    }
    boolean steep =
        edge instanceof Segment
            && line instanceof Segment
            && edge.length() > SHORT
            && line.length() > 0
            && Math.abs(edge.direction(0).cross(line.direction(0))) > STEEP;
    return !steep;
  }
}
