package org.jointwright.designer.state;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * A straight line right across a slab, from its outline to its outline.
 *
 * @param slab the slab's id
 * @param from where it meets the outline
 * @param to where it meets it again
 */
record Across(String slab, Point from, Point to) {
  /** Places nearer than this on the line are one, inches. */
  private static final double SAME = 0.1;

  /**
   * The line through two points, of the slab in which the middle between them lies, run on or cut
   * off at its outline.
   */
  static Optional<Across> of(Plan plan, Point one, Point other) {
    if (one.distance(other) <= SAME) {
      return Optional.empty();
    }
    Point middle = one.towards(other, 0.5);
    return plan.slabs().stream()
        .filter(s -> s.outline().ring().contains(middle))
        .findFirst()
        .flatMap(s -> in(s, middle, other.minus(one).unit()));
  }

  private static Optional<Across> in(Slab slab, Point middle, Point way) {
    List<Double> places = new ArrayList<>();
    double far = slab.outline().ring().perimeter();
    Segment line = new Segment(middle.minus(way.times(far)), middle.plus(way.times(far)));
    for (Edge e : slab.outline().ring().edges()) {
      Stream.concat(Crossing.of(line, e).stream().map(Crossing::at), Stream.of(e.start()))
          .filter(p -> Math.abs(p.minus(middle).cross(way)) <= SAME)
          .forEach(p -> places.add(p.minus(middle).dot(way)));
    }
    Optional<Double> before = places.stream().filter(t -> t < 0).max(Comparator.naturalOrder());
    Optional<Double> after = places.stream().filter(t -> t > 0).min(Comparator.naturalOrder());
    return before.flatMap(
        b ->
            after.map(
                a -> new Across(slab.id(), middle.plus(way.times(b)), middle.plus(way.times(a)))));
  }

  /** Whether it runs through no opening and no fixed object. */
  boolean isFree(Plan plan) {
    Segment line = new Segment(from, to);
    Slab in = plan.slab(slab).orElseThrow();
    Stream<Edge> openings =
        in.openings().stream().flatMap(o -> o.outline().ring().edges().stream());
    Stream<Edge> fixed =
        plan.fixed().stream()
            .filter(f -> f.slab().equals(slab))
            .flatMap(f -> f.shape().ring().edges().stream());
    return Stream.concat(openings, fixed).allMatch(e -> Crossing.of(line, e).isEmpty());
  }
}
