package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiFunction;
import org.jointwright.designer.shaping.SideOff;
import org.jointwright.designer.state.Desk;
import org.jointwright.measure.Length;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/**
 * How far a thing stands from the sides of its slab, to be typed: in the order of the outline, so
 * that no row changes its place under the hand.
 */
record FromSides(Plan plan, Slab slab, Words words) {
  /** How far the place of a thing may be from what its row says it is, inches. */
  private static final double SAME = 1e-9;

  /** Sides that lean more from each other are two ways: the sine of 45 degrees. */
  private static final double ACROSS = Math.sqrt(0.5) - SAME;

  /**
   * By what a thing of another size moves to stay as far from two sides as it was: those that were
   * typed last, or else the nearest.
   *
   * @param was its points before
   * @param is its points in the other size
   * @param typed the sides from which its place was typed, the last one last, by their number
   */
  static Point held(Slab slab, List<Point> was, List<Point> is, List<Integer> typed) {
    List<Edge> edges = slab.outline().ring().edges();
    List<SideOff> sides =
        SideOff.eachWay(slab, was).stream()
            .sorted(
                Comparator.comparingInt((SideOff o) -> -typed.lastIndexOf(edges.indexOf(o.side())))
                    .thenComparingDouble(SideOff::away))
            .toList();
    if (sides.isEmpty()) {
      return new Point(0, 0);
    }
    SideOff one = sides.getFirst();
    Point by = one.back(is);
    return sides.stream()
        .filter(o -> Math.abs(o.in().cross(one.in())) > ACROSS)
        .findFirst()
        .map(o -> by.plus(o.back(is)))
        .orElse(by);
  }

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
    for (SideOff off : SideOff.eachWay(slab, of)) {
      rows.add(
          new Row.Typed(
              // By its side: a hand that types on finds its row where another has joined them.
              id + "-from-" + slab.outline().ring().edges().indexOf(off.side()),
              words.say(key, names.ends(off.side())),
              words.print(Length.inches(off.away())),
              t ->
                  d -> {
                    double wanted = Figures.site(t, d).inches();
                    Point by = off.in().times(wanted - off.away());
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
}
