package org.jointwright.layout.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jointwright.layout.piece.Limits;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * Candidate lines across a slab, and the cells between them.
 *
 * @param frame the slab
 * @param limits what panels must keep to
 * @param xs the places of the upright lines, growing, inches
 * @param ys the places of the level ones
 */
record Mesh(Frame frame, Limits limits, List<Double> xs, List<Double> ys) {
  /**
   * Which gaps between the lines through corners are divided evenly, and into how many numbers of
   * parts, the fewest first.
   *
   * @param gaps for gaps between neighbouring lines
   * @param between for gaps that skip some lines
   * @param whole for the whole slab
   */
  record Family(int gaps, int between, int whole) {
    /** From the widest to the narrowest. */
    static final List<Family> ALL =
        List.of(
            new Family(3, 3, 3),
            new Family(3, 1, 2),
            new Family(3, 0, 2),
            new Family(3, 0, 1),
            new Family(3, 0, 0),
            new Family(2, 0, 1),
            new Family(2, 0, 0));
  }

  /** Lines nearer to each other than this are one, inches: joints this near are no tee (S1). */
  private static final double SAME = 1;

  /**
   * The lines of a slab: through its corners, and even divisions of the gaps between.
   *
   * @param family which gaps are divided
   * @param more other lines, upright ones first, taken where none is near
   */
  static Mesh of(Frame frame, Limits limits, Family family, List<List<Double>> more) {
    List<Double> x = frame.lines(false);
    List<Double> y = frame.lines(true);
    return new Mesh(
        frame,
        limits,
        divided(x, y, limits, family, more.getFirst()),
        divided(y, x, limits, family, more.getLast()));
  }

  private static List<Double> divided(
      List<Double> lines, List<Double> others, Limits limits, Family family, List<Double> more) {
    TreeSet<Double> found = new TreeSet<>(lines);
    for (double v : more) {
      add(found, v);
    }
    int all = lines.size() - 1;
    for (int apart = 1; apart <= all; apart++) {
      int counts = apart == 1 ? family.gaps() : apart == all ? family.whole() : family.between();
      for (int i = apart; counts > 0 && i <= all; i++) {
        double from = lines.get(i - apart);
        double gap = lines.get(i) - from;
        for (int n : counts(gap, counts, others, limits)) {
          for (int k = 1; k < n; k++) {
            add(found, from + gap * k / n);
          }
        }
      }
    }
    return List.copyOf(found);
  }

  private static void add(TreeSet<Double> found, double v) {
    Double below = found.floor(v);
    Double above = found.ceiling(v);
    boolean inside = below != null && above != null;
    if (inside && v - below >= SAME && above - v >= SAME) {
      found.add(v);
    }
  }

  private static TreeSet<Integer> counts(double gap, int more, List<Double> others, Limits limits) {
    TreeSet<Integer> found = new TreeSet<>();
    int few = fewest(gap, limits);
    for (int n = few; n < few + more; n++) {
      found.add(n);
    }
    double aspect = limits.aspect() + Tolerance.ASPECT.value();
    for (int i = 1; i < others.size(); i++) {
      double other = others.get(i) - others.get(i - 1);
      double across = other / fewest(other, limits);
      int least = (int) Math.ceil(gap / (aspect * across) - 1e-9);
      if (least >= few + more && others.size() == 2) {
        found.add(least);
        found.add(least + 1);
      }
    }
    return found;
  }

  private static int fewest(double gap, Limits limits) {
    double longest = limits.spacing() + Tolerance.LENGTH_INCHES;
    return Math.max(1, (int) Math.ceil(gap / longest - 1e-9));
  }

  /** The area of the slab, square feet. */
  double area() {
    double sum = 0;
    for (int i = 0; i + 1 < xs.size(); i++) {
      for (int j = 0; j + 1 < ys.size(); j++) {
        if (holds(i, j)) {
          sum += (xs.get(i + 1) - xs.get(i)) * (ys.get(j + 1) - ys.get(j));
        }
      }
    }
    return sum / 144;
  }

  /** Whether the cell right of line {@code i} and above line {@code j} is of the slab. */
  boolean holds(int i, int j) {
    return i >= 0
        && j >= 0
        && i + 1 < xs.size()
        && j + 1 < ys.size()
        && frame.holds((xs.get(i) + xs.get(i + 1)) / 2, (ys.get(j) + ys.get(j + 1)) / 2);
  }

  /** Whether all four cells round the node of lines {@code i} and {@code j} are of the slab. */
  boolean isInside(int i, int j) {
    return holds(i, j) && holds(i - 1, j) && holds(i, j - 1) && holds(i - 1, j - 1);
  }

  /**
   * Every panel between these lines that the rules allow.
   *
   * @param held joints that no panel may reach across
   */
  List<Tile> tiles(List<Segment> held) {
    boolean[][] in = cells();
    List<Tile> found = new ArrayList<>();
    for (int i = 0; i < xs.size() - 1; i++) {
      for (int j = 0; j < ys.size() - 1; j++) {
        int top = ys.size() - 1;
        for (int r = i + 1; r < xs.size() && spans(xs, i, r) && in[r - 1][j]; r++) {
          int up = j;
          while (up < top && in[r - 1][up] && spans(ys, j, up + 1)) {
            up++;
          }
          top = Math.min(top, up);
          for (int t = j + 1; t <= top; t++) {
            double w = xs.get(r) - xs.get(i);
            double h = ys.get(t) - ys.get(j);
            if (isSquareEnough(w, h) && isWideEnough(in, i, j, r, t) && isFree(i, j, r, t, held)) {
              found.add(new Tile(i, j, r, t, (w + h) / 12, w * h / 144));
            }
          }
        }
      }
    }
    return found;
  }

  private boolean[][] cells() {
    boolean[][] in = new boolean[xs.size() - 1][ys.size() - 1];
    for (int i = 0; i < in.length; i++) {
      for (int j = 0; j < in[i].length; j++) {
        in[i][j] = holds(i, j);
      }
    }
    return in;
  }

  private boolean spans(List<Double> at, int from, int to) {
    return at.get(to) - at.get(from) <= limits.spacing() + Tolerance.LENGTH_INCHES;
  }

  private boolean isFree(int i, int j, int r, int t, List<Segment> held) {
    Box tile =
        Box.of(new Point(xs.get(i), ys.get(j)), new Point(xs.get(r), ys.get(t))).grown(-1.1 * SAME);
    return held.stream().noneMatch(s -> s.box().meets(tile));
  }

  private boolean isSquareEnough(double w, double h) {
    return Math.max(w, h) / Math.min(w, h) <= limits.aspect() + Tolerance.ASPECT.value();
  }

  /** Rule M5: as wide as the narrowest panel, or as the slab is there. */
  private boolean isWideEnough(boolean[][] in, int i, int j, int r, int t) {
    double least = limits.narrowest() - Tolerance.LENGTH_INCHES;
    int column = (i + r) / 2;
    int row = (j + t) / 2;
    boolean across = (i == 0 || !in[i - 1][row]) && (r == xs.size() - 1 || !in[r][row]);
    boolean up = (j == 0 || !in[column][j - 1]) && (t == ys.size() - 1 || !in[column][t]);
    return (xs.get(r) - xs.get(i) >= least || across) && (ys.get(t) - ys.get(j) >= least || up);
  }
}
