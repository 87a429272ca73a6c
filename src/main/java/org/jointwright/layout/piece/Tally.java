package org.jointwright.layout.piece;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.plan.JointKind;
import org.jointwright.shape.Point;

/**
 * The figures of a draft, in feet as the rules' cost counts.
 *
 * @param length the contraction joints' length, ft
 * @param tees the ends that no joint meets from the far side
 * @param slants how many joints stand 1 to 15 degrees off the edges they serve (S10); those from a
 *     corner, which may force it, count a quarter
 * @param cv the population's coefficient of variation of the panels' areas
 * @param excess what the panels break, each weighted by its share of the area
 * @param broken how many panels break something
 */
public record Tally(
    double length, List<Tee> tees, double slants, double cv, double excess, int broken) {
  /** What a tee costs, ft: rules, Cost. */
  public static final double TEE = 8;

  private static final double NEAR = 0.95;

  /**
   * A joint's end on the side of another, open on the far side.
   *
   * @param at where
   * @param onward the direction in which the joint would go on
   * @param line the number of the joint that ends
   */
  public record Tee(Point at, Point onward, int line) {}

  /** The rules' cost, ft. */
  public double cost() {
    return (length + TEE * tees.size()) + 0.25 * length * Math.max(0, cv - 0.1);
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
    return new Tally(length, tees(draft.lines()), Slants.count(draft), cv, excess, broken);
  }

  private static List<Tee> tees(List<Laid> lines) {
    List<Tee> found = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      for (boolean last : new boolean[] {false, true}) {
        Laid line = lines.get(i);
        if (line.kind() == JointKind.CONTRACTION && isTee(lines, i, last)) {
          found.add(new Tee(line.end(last), line.onward(last), i));
        }
      }
    }
    return found;
  }

  private static boolean isTee(List<Laid> lines, int i, boolean last) {
    Laid line = lines.get(i);
    int on = line.tag(last);
    if (on < 0 || lines.get(on).kind() != JointKind.CONTRACTION) {
      return false;
    }
    Point at = line.end(last);
    Point onward = line.onward(last);
    Point along = lines.get(on).path().direction(lines.get(on).path().nearest(at));
    double side = along.cross(onward);
    for (int k = 0; k < lines.size(); k++) {
      if (k == i || k == on) {
        continue;
      }
      Laid other = lines.get(k);
      for (boolean end : new boolean[] {false, true}) {
        if (other.end(end).distance(at) <= NEAR && along.cross(other.onward(end)) * side < -0.05) {
          return false;
        }
      }
      if (other.path().distance(at) < NEAR
          && Math.min(other.end(true).distance(at), other.end(false).distance(at)) > NEAR) {
        return false;
      }
    }
    return true;
  }
}
