package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiFunction;
import org.jointwright.designer.state.Desk;
import org.jointwright.measure.Length;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.jointwright.text.Words;

/** How far a point stands from two sides of its slab, to be typed. */
record FromSides(Plan plan, Slab slab, Words words) {
  /**
   * The two rows.
   *
   * @param id what their names begin with
   * @param at the point
   * @param move moves the thing by a vector
   */
  List<Row> rows(String id, Point at, BiFunction<Desk, Point, Desk> move) {
    List<Row> rows = new ArrayList<>();
    Names names = new Names(plan, words);
    for (Segment side : two(at)) {
      Point in = side.direction(0).left();
      double away = at.minus(side.start()).dot(in);
      rows.add(
          new Row.Typed(
              id + "-from-" + rows.size(),
              words.say("window.from.side", names.ends(side)),
              words.print(Length.inches(away)),
              t ->
                  d -> {
                    double wanted = Figures.site(t, d).inches();
                    Point by = in.times(wanted - away);
                    if (!slab.outline().ring().contains(at.plus(by))) {
                      throw new BadFigure("window.figure.outside");
                    }
                    return move.apply(d, by);
                  }));
    }
    return rows;
  }

  /** The nearest straight side that the point lies beside, and the nearest not parallel to it. */
  private List<Segment> two(Point at) {
    List<Segment> near =
        slab.outline().ring().edges().stream()
            .filter(Segment.class::isInstance)
            .map(Segment.class::cast)
            .filter(s -> s.length() > 1 && isBeside(s, at))
            .sorted(Comparator.comparingDouble((Edge e) -> e.distance(at)))
            .toList();
    List<Segment> two = new ArrayList<>();
    for (Segment s : near) {
      boolean isOtherWay =
          two.isEmpty() || Math.abs(two.getFirst().direction(0).cross(s.direction(0))) > 0.5;
      if (two.size() < 2 && isOtherWay) {
        two.add(s);
      }
    }
    return two;
  }

  /** Whether the side is square across from the point, the point on the slab's side of it. */
  private static boolean isBeside(Segment side, Point at) {
    Point from = at.minus(side.start());
    double along = from.dot(side.direction(0));
    return along >= 0 && along <= side.length() && side.direction(0).cross(from) >= 0;
  }
}
