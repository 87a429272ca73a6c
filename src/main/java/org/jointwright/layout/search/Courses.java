package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import org.jointwright.layout.piece.Faults;
import org.jointwright.layout.piece.Limits;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Point;

/**
 * Where parallel lines right across a large piece may stand: some pass inside corners, the gaps
 * between are divided evenly. Which corners are passed is chosen for the least length, a corner
 * that is not passed counted as so many feet; worked out from side to side, not searched.
 */
final class Courses {
  /** What a corner passed by may count as, ft. */
  private static final double[] WORTH = {0, 4, 10, 25, 100};

  /** What a line right beside a corner counts as, ft: what lies between them is too narrow. */
  private static final double SLIVER = 20;

  /** A corner this near to a line is on it, inches. */
  private static final double ON = 0.5;

  /**
   * A set of lines.
   *
   * @param places where they stand, in order
   * @param feet how long they are together, ft
   */
  record Set(List<Double> places, double feet) {}

  private final Piece piece;
  private final Rows rows;
  private final double[] places;
  private final int[] corners;
  private final double narrowest;
  private final double feet;

  /**
   * Courses across a piece.
   *
   * @param along the direction they run in, a unit vector
   * @param hints places that they like to pass, besides the piece's inside corners
   */
  Courses(Piece piece, Point along, List<Point> hints) {
    this.piece = piece;
    this.rows = new Rows(piece, along, hints);
    Rows other = new Rows(piece, along.left(), hints);
    double cross = other.span() / other.fewest();
    Limits limits = piece.ground().limits();
    this.narrowest = Math.max(limits.narrowest(), cross / limits.aspect());
    this.feet = piece.area() / rows.span() / 12;
    List<Double> anchors = rows.anchorPlaces();
    this.places = new double[anchors.size() + 2];
    this.corners = new int[anchors.size() + 2];
    places[0] = rows.low();
    places[places.length - 1] = rows.low() + rows.span();
    for (int i = 0; i < anchors.size(); i++) {
      places[i + 1] = anchors.get(i);
      for (Faults.Corner c : piece.faults().corners()) {
        corners[i + 1] += Math.abs(c.at().dot(along.left()) - anchors.get(i)) < ON ? 1 : 0;
      }
      corners[i + 1] = Math.max(1, corners[i + 1]);
    }
  }

  /** The rows they were worked out with. */
  Rows rows() {
    return rows;
  }

  /** Sets of lines that differ: as few as there can be, and those by what a corner may count as. */
  List<Set> sets() {
    LinkedHashSet<List<Double>> found = new LinkedHashSet<>();
    found.add(rows.even(rows.fewest()));
    for (double worth : WORTH) {
      found.add(rows.divided(best(worth), 0));
    }
    return found.stream().map(p -> new Set(p, feet(p))).toList();
  }

  private double feet(List<Double> places) {
    return Pattern.on(piece, rows.moves(places, Move.Reach.THROUGH)).feet();
  }

  /** The corners that lines pass, where one passed by counts as {@code worth} ft. */
  private List<Double> best(double worth) {
    int n = places.length;
    double[] least = new double[n];
    int[] from = new int[n];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    least[0] = 0;
    for (int k = 1; k < n; k++) {
      for (int i = k - 1; i >= 0; i--) {
        double cost = least[i] + between(i, k, worth) + (k < n - 1 ? feet : 0);
        if (cost < least[k]) {
          least[k] = cost;
          from[k] = i;
        }
      }
    }
    List<Double> passed = new ArrayList<>();
    for (int k = from[n - 1]; k > 0; k = from[k]) {
      passed.addFirst(places[k]);
    }
    return passed;
  }

  /** What the lines between two places count as, ft. */
  private double between(int i, int k, double worth) {
    double gap = places[k] - places[i];
    int parts = rows.parts(gap);
    double wide = gap / parts;
    double cost = (parts - 1) * feet;
    if (wide < narrowest) {
      cost += 2 * feet;
    }
    for (int c = i + 1; c < k; c++) {
      double at = (places[c] - places[i]) / wide;
      double off = Math.abs(at - Math.rint(at)) * wide;
      if (off > ON) {
        cost += corners[c] * (worth + (off < narrowest ? SLIVER : 0) * Math.min(1, worth));
      }
    }
    return cost;
  }
}
