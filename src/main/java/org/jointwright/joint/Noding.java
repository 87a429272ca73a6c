package org.jointwright.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Box;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * Splits lines where they meet. Points nearer than {@link #SAME} become one node; of stretches that
 * lie on each other only one is kept, that of the lowest rank.
 */
final class Noding {
  /** Points nearer than this are one, inches: over the rounding of a file's four decimals. */
  static final double SAME = 0.005;

  private final List<Line> lines;
  private final List<TreeMap<Double, Point>> cuts = new ArrayList<>();
  private final Map<Long, List<Point>> cells = new HashMap<>();

  private Noding(List<Line> lines) {
    this.lines = lines;
  }

  /** The pieces of the lines between their nodes; two pieces meet only at a common end. */
  static List<Line> pieces(List<Line> lines) {
    Noding noding = new Noding(lines);
    noding.findCuts();
    return noding.split();
  }

  private void findCuts() {
    for (Line line : lines) {
      TreeMap<Double, Point> own = new TreeMap<>();
      own.put(0.0, node(line.edge().start()));
      own.put(1.0, node(line.edge().end()));
      cuts.add(own);
    }
    List<Integer> byLeft = new ArrayList<>();
    List<Box> boxes = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      byLeft.add(i);
      boxes.add(lines.get(i).edge().box().grown(SAME));
    }
    byLeft.sort(
        Comparator.comparingDouble((Integer i) -> boxes.get(i).minX()).thenComparingInt(i -> i));
    for (int a = 0; a < byLeft.size(); a++) {
      int i = byLeft.get(a);
      for (int b = a + 1; b < byLeft.size(); b++) {
        int j = byLeft.get(b);
        if (boxes.get(j).minX() > boxes.get(i).maxX()) {
          break;
        }
        if (boxes.get(i).meets(boxes.get(j))) {
          meet(i, j);
        }
      }
    }
  }

  private void meet(int i, int j) {
    Edge a = lines.get(i).edge();
    Edge b = lines.get(j).edge();
    for (Point p : List.of(a.start(), a.end())) {
      cutNear(j, p);
    }
    for (Point p : List.of(b.start(), b.end())) {
      cutNear(i, p);
    }
    for (Crossing c : Crossing.of(a, b)) {
      Point at = node(c.at());
      cut(i, c.first(), at);
      cut(j, c.second(), at);
    }
  }

  private void cutNear(int line, Point p) {
    Edge e = lines.get(line).edge();
    double t = e.nearest(p);
    if (e.at(t).distance(p) <= SAME) {
      cut(line, t, node(p));
    }
  }

  private void cut(int line, double t, Point at) {
    TreeMap<Double, Point> own = cuts.get(line);
    if (!own.containsValue(at)) {
      own.put(t, at);
    }
  }

  /** The node that stands for {@code p}: the first point met within {@link #SAME}. */
  private Point node(Point p) {
    long cx = (long) Math.floor(p.x() / SAME);
    long cy = (long) Math.floor(p.y() / SAME);
    for (long x = cx - 1; x <= cx + 1; x++) {
      for (long y = cy - 1; y <= cy + 1; y++) {
        for (Point q : cells.getOrDefault(key(x, y), List.of())) {
          if (q.distance(p) <= SAME) {
            return q;
          }
        }
      }
    }
    cells.computeIfAbsent(key(cx, cy), k -> new ArrayList<>()).add(p);
    return p;
  }

  private static long key(long x, long y) {
    return x * 0x9E3779B97F4A7C15L + y;
  }

  private List<Line> split() {
    Map<Ends, List<Line>> between = new HashMap<>();
    List<Line> kept = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      double from = 0;
      Point start = cuts.get(i).firstEntry().getValue();
      for (Map.Entry<Double, Point> cut : cuts.get(i).tailMap(0.0, false).entrySet()) {
        if (cut.getValue().equals(start)) {
          continue;
        }
        Line piece =
            lines.get(i).on(piece(lines.get(i).edge(), from, cut.getKey(), start, cut.getValue()));
        List<Line> same =
            between.computeIfAbsent(Ends.of(start, cut.getValue()), k -> new ArrayList<>());
        if (same.stream().noneMatch(other -> coincide(other.edge(), piece.edge()))) {
          same.add(piece);
          kept.add(piece);
        }
        from = cut.getKey();
        start = cut.getValue();
      }
    }
    return kept;
  }

  private static Edge piece(Edge edge, double from, double to, Point start, Point end) {
    return switch (edge) {
      case Segment s -> new Segment(start, end);
      case Arc a -> Arc.through(start, a.at((from + to) / 2), end);
    };
  }

  private static boolean coincide(Edge a, Edge b) {
    return a.at(0.5).distance(b.at(0.5)) <= 3 * SAME;
  }

  /** Two ends, in an order of their own. */
  private record Ends(Point low, Point high) {
    static Ends of(Point a, Point b) {
      boolean ordered = a.x() < b.x() || (a.x() == b.x() && a.y() <= b.y());
      return ordered ? new Ends(a, b) : new Ends(b, a);
    }
  }
}
