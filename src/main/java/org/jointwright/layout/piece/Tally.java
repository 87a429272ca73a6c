package org.jointwright.layout.piece;

import java.util.List;
import org.jointwright.plan.JointKind;
import org.jointwright.practice.Cost;
import org.jointwright.shape.Point;

/**
 * The figures of a draft, in feet as the rules' cost counts.
 *
 * @param length the contraction joints' length, ft
 * @param tees the ends that no joint meets from the far side
 * @param ys the places where three joints end with none in line with another
 * @param slants how many joints stand 1 to 15 degrees off the edges they serve (S10); those from a
 *     corner, which may force it, count a quarter
 * @param cv the population's coefficient of variation of the panels' areas
 * @param excess what the panels break, each weighted by its share of the area
 * @param broken how many panels break something
 */
public record Tally(
    double length, List<Tee> tees, int ys, double slants, double cv, double excess, int broken) {
  /** What a tee costs, ft. */
  public static final double TEE = Cost.TEE.value().feet();

  /** What a Y costs, ft. */
  public static final double Y = Cost.Y.value().feet();

  private static final double UNEVEN = Cost.UNEVEN.value();
  private static final double EVEN = Cost.EVEN.value();

  /**
   * A joint's end on the side of another, open on the far side.
   *
   * @param at where
   * @param onward the direction in which the joint would go on
   * @param line the number of the joint that ends
   */
  public record Tee(Point at, Point onward, int line) {}

  /** What its tees and Ys cost, ft. */
  public double meets() {
    return TEE * tees.size() + Y * ys;
  }

  /** The rules' cost, ft. */
  public double cost() {
    return length + meets() + UNEVEN * length * Math.max(0, cv - EVEN);
  }

  static Tally of(Draft draft) {
    double length = 0;
    for (Laid l : draft.lines()) {
      if (l.kind() == JointKind.CONTRACTION) {
        length += l.path().length() / 12;
      }
    }
    double total = 0;
    double squares = 0;
    for (Piece p : draft.pieces()) {
      total += p.area();
      squares += p.area() * p.area();
    }
    int n = draft.pieces().size();
    double mean = total / n;
    double cv = Math.sqrt(Math.max(0, squares / n / mean / mean - 1));
    double excess = 0;
    int broken = 0;
    for (Piece p : draft.pieces()) {
      double e = p.faults().excess();
      if (e > 0) {
        excess += e * p.area() / total;
        broken++;
      }
    }
    Meets meets = Meets.of(draft.lines());
    return new Tally(
        length, meets.tees(), meets.ys(), Slants.count(draft, length), cv, excess, broken);
  }
}
