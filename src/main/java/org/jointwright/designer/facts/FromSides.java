package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jointwright.designer.shaping.SideOff;
import org.jointwright.designer.state.Desk;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthReader;
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

  /** A distance that misses its figure by no more is the figure, inches. */
  private static final double AS_TYPED = 1e-6;

  /** Two sides that lean less from each other hold no place between them: sine of 15 degrees. */
  private static final double TWO_WAYS = 0.25;

  /**
   * By what a thing of another size moves to stay as far from two sides as it was: those that were
   * typed last, or else the nearest.
   *
   * @param sides how far it was from the sides
   * @param is its points in the other size
   * @param typed the sides from which its place was typed, the last one last, by their number
   */
  static Point held(Slab slab, List<SideOff> sides, List<Point> is, List<Integer> typed) {
    return SideOff.two(slab, sides, typed).stream()
        .map(o -> o.back(is))
        .reduce(new Point(0, 0), Point::plus);
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
    List<SideOff> sides = SideOff.eachWay(slab, of);
    return rows(id, key, of, sides, d -> taped(sides, d), move);
  }

  /**
   * The rows of a thing in the hand.
   *
   * @param sides the sides to measure from
   * @param typed those of them it was typed from, the last one last, by their number
   */
  List<Row> rows(
      String id,
      String key,
      List<Point> of,
      List<SideOff> sides,
      Function<Desk, List<Integer>> typed,
      BiFunction<Desk, Point, Desk> move) {
    List<Row> rows = new ArrayList<>();
    Names names = new Names(plan, words);
    for (SideOff off : sides) {
      rows.add(
          new Row.Typed(
              // By its side: a hand that types on finds its row where another has joined them.
              id + "-from-" + off.number(slab),
              words.say(key, names.ends(off.side())),
              words.print(Length.inches(off.away())),
              t ->
                  d -> {
                    double wanted = Figures.site(t, d).inches();
                    Point by = by(off, wanted, sides, typed.apply(d));
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

  /** To the new distance, and as far from the other side that was typed as it was. */
  private Point by(SideOff off, double wanted, List<SideOff> sides, List<Integer> typed) {
    return typed.reversed().stream()
        .flatMap(n -> sides.stream().filter(o -> o.number(slab) == n))
        .filter(o -> Math.abs(o.in().cross(off.in())) > TWO_WAYS)
        .findFirst()
        .map(o -> off.to(wanted, o))
        .orElseGet(() -> off.to(wanted));
  }

  /**
   * The sides from which a thing that was set down stands exactly as far as is printed: it was
   * typed from these, if from any. The nearest comes last.
   */
  private List<Integer> taped(List<SideOff> sides, Desk desk) {
    return sides.stream()
        .filter(
            o -> {
              String printed = words.print(Length.inches(o.away()));
              double read = LengthReader.read(printed, desk.bare()).inches();
              return Math.abs(read - o.away()) < AS_TYPED;
            })
        .sorted(Comparator.comparingDouble(SideOff::away).reversed())
        .map(o -> o.number(slab))
        .toList();
  }
}
