package org.jointwright.check.figure;

import java.util.List;
import org.jointwright.check.evidence.JointEnds.End;
import org.jointwright.check.evidence.Marks;
import org.jointwright.measure.UnitSystem;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Segment;

/**
 * How contraction joints end on edges; ends at corners of outline, openings and box-outs left out.
 *
 * @param onEdges ends on edges of the outline, of openings and of box-outs
 * @param square those within 15 degrees of square to the edge, or of the radius at an arc
 * @param onStraight ends on straight edges of the outline and of openings
 * @param whole those at a whole inch, or whole 10 mm in a metric plan, from a corner of the edge
 */
public record EndCount(int onEdges, int square, int onStraight, int whole) {
  private static final double SQUARE = Angles.EDGE.value() + Tolerance.ANGLE.value();

  static EndCount of(List<End> ends, UnitSystem units) {
    List<End> along = ends.stream().filter(e -> !e.atCorner()).toList();
    List<End> straight =
        along.stream().filter(e -> !e.onBoxOut() && e.edge() instanceof Segment).toList();
    return new EndCount(
        along.size(),
        (int) along.stream().filter(e -> e.offSquare() <= SQUARE).count(),
        straight.size(),
        (int) straight.stream().filter(e -> isWhole(e, units)).count());
  }

  private static boolean isWhole(End e, UnitSystem units) {
    double length = e.edge().length();
    return Marks.offWhole(length, e.along() * length, units) <= Marks.NEAR;
  }

  /** The share of ends that are square to their edge; 1 without ends. */
  public double squareShare() {
    return share(square, onEdges);
  }

  /** The share of ends on straight edges that stand on whole marks; 1 without ends. */
  public double wholeShare() {
    return share(whole, onStraight);
  }

  static double share(int part, int whole) {
    return whole == 0 ? 1 : (double) part / whole;
  }
}
