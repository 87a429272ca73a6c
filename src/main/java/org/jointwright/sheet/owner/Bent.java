package org.jointwright.sheet.owner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/**
 * A slab that bends and is as wide all along, as a walk or a drive is. Nobody asks how large a box
 * would hold it: it is told by its width and by its length along its middle.
 *
 * @param width how wide it is, inches
 * @param length how long it is along its middle, inches
 */
record Bent(double width, double length) {
  /** Widths and places that differ by less are the same, inches. */
  private static final double SAME = 0.25;

  /** The sine of the angle between sides that run the same way. */
  private static final double PARALLEL = 0.002;

  /** A slab with corners that is fewer times as long as wide is an L, not a walk (no source). */
  private static final double LEAST = 4;

  /** One that bends along arcs is no L. */
  private static final double LEAST_ROUND = 1.5;

  /** An end may be slanted: so many times as long as the slab is wide. */
  private static final double SLANT = 1.5;

  /** What an outline is where it is such a slab; empty for any other, and for a straight one. */
  static Optional<Bent> of(Ring outline) {
    List<Edge> sides = whole(outline.counterClockwise().edges());
    int half = sides.size() / 2;
    boolean bends = half > 2 || sides.stream().anyMatch(Arc.class::isInstance);
    if (sides.size() % 2 != 0 || half < 2 || !bends) {
      return Optional.empty();
    }
    for (int end = 0; end < half; end++) {
      Optional<Bent> bent = from(sides, end);
      if (bent.isPresent()) {
        return bent;
      }
    }
    return Optional.empty();
  }

  /** Sides that go straight on, or on along the same circle, as one. */
  private static List<Edge> whole(List<Edge> edges) {
    List<Edge> sides = new ArrayList<>();
    for (Edge edge : edges) {
      Optional<Edge> one = sides.isEmpty() ? Optional.empty() : joined(sides.getLast(), edge);
      one.ifPresent(o -> sides.removeLast());
      sides.add(one.orElse(edge));
    }
    if (sides.size() > 2) {
      joined(sides.getLast(), sides.getFirst())
          .ifPresent(
              o -> {
                sides.removeLast();
                sides.set(0, o);
              });
    }
    return sides;
  }

  private static Optional<Edge> joined(Edge a, Edge b) {
    if (a instanceof Arc first
        && b instanceof Arc second
        && first.centre().distance(second.centre()) < SAME
        && first.sweep() * second.sweep() > 0
        && Math.abs(first.sweep() + second.sweep()) < 2 * Math.PI - PARALLEL) {
      return Optional.of(
          new Arc(a.start(), b.end(), first.centre(), first.sweep() + second.sweep()));
    }
    boolean straight =
        a instanceof Segment
            && b instanceof Segment
            && Math.abs(a.direction(0).cross(b.direction(0))) < PARALLEL
            && a.direction(0).dot(b.direction(0)) > 0;
    return straight ? Optional.of(new Segment(a.start(), b.end())) : Optional.empty();
  }

  /** With one end at a side and the other at the side across the ring. */
  private static Optional<Bent> from(List<Edge> sides, int end) {
    int n = sides.size();
    double width = Double.NaN;
    double around = 0;
    for (int k = 1; k < n / 2; k++) {
      Edge right = sides.get(end + k);
      Edge left = sides.get((end + n - k) % n).reversed();
      OptionalDouble apart = apart(right, left);
      if (apart.isEmpty() || Math.abs(apart.getAsDouble() - width) > SAME) {
        return Optional.empty();
      }
      width = Double.isNaN(width) ? apart.getAsDouble() : width;
      around += right.length() + left.length();
    }
    boolean closed = isEnd(sides.get(end), width) && isEnd(sides.get(end + n / 2), width);
    double least = sides.stream().anyMatch(Arc.class::isInstance) ? LEAST_ROUND : LEAST;
    return closed && around / 2 >= least * width
        ? Optional.of(new Bent(width, around / 2))
        : Optional.empty();
  }

  private static boolean isEnd(Edge side, double width) {
    return side instanceof Segment && side.length() <= SLANT * width;
  }

  /** How far a side lies to the left of another that runs beside it; empty where none does. */
  private static OptionalDouble apart(Edge right, Edge left) {
    if (right instanceof Arc a && left instanceof Arc b) {
      boolean beside = a.centre().distance(b.centre()) < SAME && a.sweep() * b.sweep() > 0;
      double apart = (a.radius() - b.radius()) * Math.signum(a.sweep());
      return beside && apart > 0 ? OptionalDouble.of(apart) : OptionalDouble.empty();
    }
    if (right instanceof Segment && left instanceof Segment) {
      boolean beside =
          Math.abs(right.direction(0).cross(left.direction(0))) < PARALLEL
              && right.direction(0).dot(left.direction(0)) > 0;
      double apart = right.direction(0).cross(left.at(0.5).minus(right.at(0.5)));
      return beside && apart > 0 ? OptionalDouble.of(apart) : OptionalDouble.empty();
    }
    return OptionalDouble.empty();
  }
}
