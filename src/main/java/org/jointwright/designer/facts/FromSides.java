package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.jointwright.designer.state.Desk;
import org.jointwright.measure.Length;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.jointwright.text.Words;

/**
 * How far a thing stands from the sides of its slab, to be typed: from the nearest each way, so
 * that the tape may have been hooked on any of them, and in the order of the outline, so that no
 * row changes its place under the hand.
 */
record FromSides(Plan plan, Slab slab, Words words) {
  /** Sides that lean less from each other look the same way: the cosine of 45 degrees. */
  private static final double ALIKE = Math.sqrt(0.5);

  /** How far the place of a thing may be from what its row says it is, inches. */
  private static final double SAME = 1e-9;

  /**
   * The rows.
   *
   * @param id what their names begin with
   * @param key the words that say what of the thing is measured, its middle or its near edge
   * @param of the points of which the nearest is measured
   * @param move moves the thing by a vector
   */
  List<Row> rows(String id, String key, List<Point> of, BiFunction<Desk, Point, Desk> move) {
    List<Row> rows = new ArrayList<>();
    Names names = new Names(plan, words);
    for (Segment side : eachWay(middle(of))) {
      Point in = side.direction(0).left();
      double away = away(side, of);
      rows.add(
          new Row.Typed(
              // By its side: a hand that types on finds its row where another has joined them.
              id + "-from-" + slab.outline().ring().edges().indexOf(side),
              words.say(key, names.ends(side)),
              words.print(Length.inches(away)),
              t ->
                  d -> {
                    double wanted = Figures.site(t, d).inches();
                    Point by = in.times(wanted - away);
                    boolean stays =
                        of.stream().allMatch(p -> slab.outline().ring().contains(p.plus(by)));
                    if (wanted < -SAME || !stays) {
                      throw new BadFigure("window.figure.outside");
                    }
                    return move.apply(d, by);
                  }));
    }
    return rows;
  }

  private static double away(Segment side, List<Point> of) {
    Point in = side.direction(0).left();
    return of.stream().mapToDouble(p -> p.minus(side.start()).dot(in)).min().orElseThrow();
  }

  private static Point middle(List<Point> of) {
    Point sum = of.stream().reduce(Point::plus).orElseThrow();
    return sum.times(1.0 / of.size());
  }

  /** The nearest straight side in each of four directions that the point lies beside. */
  private List<Segment> eachWay(Point at) {
    List<Segment> order =
        slab.outline().ring().edges().stream()
            .filter(Segment.class::isInstance)
            .map(Segment.class::cast)
            .toList();
    List<Segment> near =
        order.stream()
            .filter(s -> s.length() > 1 && isBeside(s, at))
            .sorted(Comparator.comparingDouble((Edge e) -> e.distance(at)))
            .toList();
    Map<Integer, Segment> each = new HashMap<>();
    for (Segment s : near) {
      each.putIfAbsent(way(near.getFirst().direction(0), s.direction(0)), s);
    }
    return order.stream().filter(each::containsValue).toList();
  }

  /** Which way a side runs beside the first: 0 the same, 1 to its left, 2 against it, 3 right. */
  private static int way(Point first, Point other) {
    if (Math.abs(first.dot(other)) > ALIKE) {
      return first.dot(other) > 0 ? 0 : 2;
    }
    return first.cross(other) > 0 ? 1 : 3;
  }

  /** Whether the side is square across from the point, the point on the slab's side of it. */
  private static boolean isBeside(Segment side, Point at) {
    Point from = at.minus(side.start());
    double along = from.dot(side.direction(0));
    return along >= 0 && along <= side.length() && side.direction(0).cross(from) >= 0;
  }
}
