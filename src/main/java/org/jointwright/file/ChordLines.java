package org.jointwright.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jointwright.joint.Panel;
import org.jointwright.joint.Side;
import org.jointwright.joint.SlabLayout;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Chords;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * The arcs of one slab's layout as chords. Every arc is first parted where panels have a corner on
 * it, and a piece gives the same chords in both directions, so that lines on each other share every
 * point.
 */
final class ChordLines {
  /** How far a chord may leave its arc, inches: half of what the format allows. */
  private static final double ERROR = 1.0 / 32;

  /** How much a chord may turn: so little that no reader takes the curve for a row of corners. */
  private static final double TURN = Math.toRadians(5.9);

  private final Set<Point> nodes = new LinkedHashSet<>();

  ChordLines(SlabLayout layout) {
    for (Panel panel : layout.panels()) {
      addNodes(panel.outer());
      panel.holes().forEach(this::addNodes);
    }
  }

  private void addNodes(List<Side> sides) {
    sides.forEach(s -> nodes.add(s.edge().start()));
  }

  /** The points along the edges, from the first start to just before the last end. */
  List<Point> along(List<Edge> edges) {
    List<Point> points = new ArrayList<>();
    for (Edge edge : edges) {
      switch (edge) {
        case Segment s -> points.add(s.start());
        case Arc a -> pieces(a).forEach(piece -> points.addAll(chords(piece)));
      }
    }
    return points;
  }

  private List<Arc> pieces(Arc arc) {
    TreeSet<Double> cuts = new TreeSet<>();
    double near = VertexList.SAME / arc.length();
    for (Point node : nodes) {
      double t = arc.nearest(node);
      if (t > near && t < 1 - near && arc.at(t).distance(node) <= VertexList.SAME) {
        cuts.add(t);
      }
    }
    List<Arc> pieces = new ArrayList<>();
    double from = 0;
    for (double cut : cuts) {
      if (cut - from > near) {
        pieces.add(arc.part(from, cut));
        from = cut;
      }
    }
    pieces.add(arc.part(from, 1));
    return pieces;
  }

  /** The chord points of a piece without its end; taken counter-clockwise whichever way it runs. */
  private static List<Point> chords(Arc piece) {
    Arc forwards = piece.sweep() > 0 ? piece : piece.reversed();
    int n =
        Math.max(Chords.count(forwards, ERROR), (int) Math.ceil(Math.abs(forwards.sweep()) / TURN));
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= n; i++) {
      points.add(forwards.at((double) i / n));
    }
    if (piece.sweep() < 0) {
      Collections.reverse(points);
    }
    return points.subList(0, n);
  }
}
