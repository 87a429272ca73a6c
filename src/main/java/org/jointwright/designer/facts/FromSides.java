package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.jointwright.designer.shaping.SideOff;
import org.jointwright.designer.state.Desk;
import org.jointwright.measure.Length;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/**
 * How far a thing stands from the sides of its slab, to be typed: in the order of the outline, so
 * that no row changes its place under the hand.
 */
record FromSides(Plan plan, Slab slab, Words words) {
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
