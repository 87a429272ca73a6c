package org.jointwright.check.face;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.joint.Source;
import org.jointwright.practice.Corners;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Point;

/**
 * Unbroken stretches of a panel's edge that turn concave at a small radius: arcs, curves traced in
 * short straight pieces, and box-outs that are round though made of straight pieces.
 */
public final class TightTurns {
  private static final double TIGHT =
      Corners.TIGHT_RADIUS.value().inches() - Tolerance.LENGTH_INCHES;

  /** A corner between straight pieces that turns no more than this may trace a curve, degrees. */
  private static final double TRACING = 5 + Tolerance.ANGLE.value();

  /** The sides of a round box-out turn no more than this at its corners, degrees. */
  private static final double ROUND_CORNER = 45 + Tolerance.ANGLE.value();

  private static final double NO_TURN = 0.2;

  /**
   * A stretch.
   *
   * @param degrees how far it turns
   * @param radius the smallest radius on it, inches
   * @param at the middle of its longest turn
   */
  public record Tight(double degrees, double radius, Point at) {}

  /** A part of the edge: what it adds to the stretch it is on, or that it ends it. */
  private record Part(boolean ends, double degrees, double radius, Point at) {}

  private TightTurns() {}

  /** The stretches of a loop. */
  public static List<Tight> of(Loop loop) {
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < loop.size(); i++) {
      parts.add(place(loop, i));
      parts.add(side(loop, i));
    }
    int first = 0;
    while (first < parts.size() && !parts.get(first).ends()) {
      first++;
    }
    List<Tight> found = new ArrayList<>();
    List<Part> run = new ArrayList<>();
    for (int k = 0; k <= parts.size(); k++) {
      boolean over = k == parts.size();
      Part part = parts.get((first + k) % parts.size());
      if (!over && !part.ends()) {
        run.add(part);
      } else {
        close(run, found);
      }
    }
    return found;
  }

  private static void close(List<Part> run, List<Tight> found) {
    double degrees = run.stream().mapToDouble(Part::degrees).sum();
    if (degrees > 0) {
      double radius =
          run.stream().filter(p -> p.degrees() > 0).mapToDouble(Part::radius).min().orElse(0);
      Part most = run.stream().reduce((a, b) -> b.degrees() > a.degrees() ? b : a).orElseThrow();
      found.add(new Tight(degrees, radius, most.at()));
    }
    run.clear();
  }

  /** The place where step {@code i} begins. */
  private static Part place(Loop loop, int i) {
    double concave = -loop.turn(i);
    Point at = loop.step(i).edge().start();
    if (concave > NO_TURN && traces(loop, i, concave)) {
      double radius =
          (loop.step(i - 1).length() + loop.step(i).length()) / 2 / Math.toRadians(concave);
      return adds(concave, radius, at);
    }
    return new Part(Math.abs(concave) > Tolerance.ANGLE.value(), 0, 0, at);
  }

  private static boolean traces(Loop loop, int i, double concave) {
    boolean straight =
        !(loop.step(i - 1).edge() instanceof Arc) && !(loop.step(i).edge() instanceof Arc);
    return concave <= (isSoft(loop, i) ? ROUND_CORNER : straight ? TRACING : 0);
  }

  /** Whether step {@code i} begins at a corner of a box-out that is round. */
  public static boolean isSoft(Loop loop, int i) {
    return loop.step(i - 1).soft()
        && loop.step(i).soft()
        && loop.step(i - 1).source() instanceof Source.OnBoxOut a
        && loop.step(i).source() instanceof Source.OnBoxOut b
        && a.fixed().equals(b.fixed());
  }

  private static Part side(Loop loop, int i) {
    Step step = loop.step(i);
    Point at = step.edge().at(0.5);
    if (step.edge() instanceof Arc arc) {
      return step.bend() < 0 ? adds(-step.bend(), arc.radius(), at) : new Part(true, 0, 0, at);
    }
    boolean goesOn =
        step.length() <= Tolerance.LENGTH_INCHES
            || (place(loop, i).degrees() > 0 && place(loop, i + 1).degrees() > 0);
    return new Part(!goesOn, 0, 0, at);
  }

  private static Part adds(double degrees, double radius, Point at) {
    return radius < TIGHT ? new Part(false, degrees, radius, at) : new Part(true, 0, 0, at);
  }
}
