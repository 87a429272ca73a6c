package org.jointwright.check.along;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/**
 * The stretches of a line on which something holds, found by walking along it in small steps; a
 * stretch's ends are narrowed down until they matter to no limit.
 */
public final class Stretches {
  /** The steps of the walk, inches: a stretch shorter than that between two steps is not seen. */
  private static final double STEP = 0.25;

  /** Long lines are walked in no more steps than this. */
  private static final int MOST_STEPS = 20_000;

  private static final int HALVINGS = 12;

  private Stretches() {}

  /**
   * One stretch.
   *
   * @param edge the edge it is on
   * @param from the share of the edge's length where it begins
   * @param to the share where it ends; equal where only one point holds
   */
  public record Stretch(Edge edge, double from, double to) {
    /** Its length, inches. */
    public double length() {
      return (to - from) * edge.length();
    }

    /** Its middle. */
    public Point middle() {
      return edge.at((from + to) / 2);
    }
  }

  /** The stretches of a path where {@code holds}. */
  public static List<Stretch> of(Path path, Predicate<Point> holds) {
    return path.edges().stream().flatMap(e -> of(e, holds).stream()).toList();
  }

  /** The stretches of an edge where {@code holds}. */
  public static List<Stretch> of(Edge edge, Predicate<Point> holds) {
    int n = (int) Math.clamp(Math.ceil(edge.length() / STEP), 4, MOST_STEPS);
    List<Stretch> found = new ArrayList<>();
    double from = -1;
    for (int i = 0; i <= n; i++) {
      double t = (double) i / n;
      boolean in = holds.test(edge.at(t));
      if (in && from < 0) {
        from = i == 0 ? 0 : change(edge, holds, t, (i - 1.0) / n);
      } else if (!in && from >= 0) {
        found.add(new Stretch(edge, from, change(edge, holds, (i - 1.0) / n, t)));
        from = -1;
      }
    }
    if (from >= 0) {
      found.add(new Stretch(edge, from, 1));
    }
    return found;
  }

  /** All their lengths together, inches. */
  public static double length(List<Stretch> stretches) {
    return stretches.stream().mapToDouble(Stretch::length).sum();
  }

  private static double change(Edge edge, Predicate<Point> holds, double in, double out) {
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (in + out) / 2;
      if (holds.test(edge.at(middle))) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return in;
  }
}
