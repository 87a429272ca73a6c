package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * A part of a large slab, bounded by lines right across it or by its edges, that is laid by itself:
 * what lies round an opening or corner that the lines do not suit. Inches, measured square to rows
 * and square to columns.
 *
 * @param low the row it begins at
 * @param high the row it ends at
 * @param left the column it begins at
 * @param right the column it ends at
 */
record Bay(double low, double high, double left, double right) {
  /** Lines that are nearer coincide, inches. */
  private static final double HAIR = 1;

  /** What edges span, rows running along {@code along}. */
  static Bay round(List<Edge> edges, Point along) {
    Point up = along.left();
    Bay box = null;
    for (Edge e : edges) {
      int parts = e.turn() == 0 ? 1 : 8;
      for (int i = 0; i <= parts; i++) {
        Point p = e.at((double) i / parts);
        double row = p.dot(up);
        double column = p.dot(up.left());
        Bay at = new Bay(row, row, column, column);
        box = box == null ? at : box.with(at);
      }
    }
    if (box == null) {
      throw new IllegalArgumentException("no edges");
    }
    return box;
  }

  /** The least that holds both. */
  Bay with(Bay o) {
    return new Bay(
        Math.min(low, o.low),
        Math.max(high, o.high),
        Math.min(left, o.left),
        Math.max(right, o.right));
  }

  /** Whether the two share more than an edge. */
  boolean overlaps(Bay o) {
    return low < o.high - HAIR
        && o.low < high - HAIR
        && left < o.right - HAIR
        && o.left < right - HAIR;
  }

  /** Whether a row at that place runs through it. */
  boolean takesRow(double place) {
    return place > low + HAIR && place < high - HAIR;
  }

  /** Whether a column at that place runs through it. */
  boolean takesColumn(double place) {
    return place > left + HAIR && place < right - HAIR;
  }

  double area() {
    return (high - low) * (right - left);
  }

  /**
   * The bay that reaches on to lines, at least {@code gap} away unless they coincide with its own
   * side; where there are none, to the whole's sides.
   */
  Bay reaching(List<Double> rows, List<Double> columns, double gap, Bay whole) {
    return new Bay(
        before(rows, low, gap, whole.low),
        -before(negative(rows), -high, gap, -whole.high),
        before(columns, left, gap, whole.left),
        -before(negative(columns), -right, gap, -whole.right));
  }

  private static List<Double> negative(List<Double> places) {
    return places.stream().map(v -> -v).toList();
  }

  private static double before(List<Double> lines, double at, double gap, double end) {
    double best = end;
    for (double v : lines) {
      if ((Math.abs(v - at) <= HAIR || v <= at - gap) && v > best) {
        best = v;
      }
    }
    return best;
  }

  /** The bays, those that overlap made one. */
  static List<Bay> apart(List<Bay> bays) {
    List<Bay> found = new ArrayList<>();
    for (Bay b : bays) {
      Bay all = b;
      for (int i = 0; i < found.size(); ) {
        if (found.get(i).overlaps(all)) {
          all = all.with(found.remove(i));
          i = 0;
        } else {
          i++;
        }
      }
      found.add(all);
    }
    return found;
  }
}
