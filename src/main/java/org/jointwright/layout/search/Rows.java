package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Chord;
import org.jointwright.layout.piece.Faults;
import org.jointwright.layout.piece.Limits;
import org.jointwright.layout.piece.Loop;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** Parallel lines across a piece: where they may stand. */
final class Rows {
  /** Openings of a larger radius are treated as curved edges, inches. */
  private static final double ROUND = 96;

  /** A joint meets a circle at 60 degrees or more within this share of its radius. */
  private static final double OFF_CENTRE = 0.48;

  private static final int FEW = 2;

  /** A side of a hole this many times the spacing asks for a line in line with it. */
  private static final double LONG = 1.5;

  private final Piece piece;
  private final Point along;
  private final Point across;
  private final double low;
  private final double high;
  private final List<Double> anchors;
  private final Map<Double, Double> slack = new HashMap<>();

  /**
   * Lines that run along {@code along}.
   *
   * @param hints places that a line should pass, besides the piece's own inside corners
   */
  Rows(Piece piece, Point along, List<Point> hints) {
    this.piece = piece;
    this.along = along;
    this.across = along.left();
    double lo = Double.POSITIVE_INFINITY;
    double hi = Double.NEGATIVE_INFINITY;
    for (Edge e : piece.outer().edges()) {
      int parts = e.turn() == 0 ? 1 : 8;
      for (int i = 0; i < parts; i++) {
        double v = e.at((double) i / parts).dot(across);
        lo = Math.min(lo, v);
        hi = Math.max(hi, v);
      }
    }
    this.low = lo;
    this.high = hi;
    this.anchors = anchors(hints);
  }

  private List<Double> anchors(List<Point> hints) {
    TreeSet<Double> found = new TreeSet<>();
    for (Faults.Corner c : piece.faults().corners()) {
      if (serves(piece, c, along) || serves(piece, c, along.times(-1))) {
        found.add(c.at().dot(across));
      }
    }
    for (int l = 0; l < piece.loopCount(); l++) {
      for (Edge e : piece.loop(l).edges()) {
        // A joint may go to the middle of a round opening, not along its side.
        if (e instanceof Arc a && a.turn() < 0 && a.radius() < ROUND) {
          double v = a.centre().dot(across);
          found.add(v);
          slack.merge(v, OFF_CENTRE * a.radius(), Math::max);
        }
      }
    }
    for (Point p : piece.ground().zones().corners(box(piece))) {
      found.add(p.dot(across));
    }
    for (Point p : hints) {
      found.add(p.dot(across));
    }
    List<Double> kept = new ArrayList<>();
    for (double v : found) {
      boolean near = !kept.isEmpty() && v - kept.getLast() < 0.3;
      if (v > low + 12 && v < high - 12 && !near) {
        kept.add(v);
      }
    }
    return kept;
  }

  private static Box box(Piece piece) {
    return piece.outer().edges().stream().map(Edge::box).reduce(Box::with).orElseThrow();
  }

  /** Whether a joint that leaves the corner in {@code direction} leaves two good angles. */
  static boolean serves(Piece piece, Faults.Corner corner, Point direction) {
    Loop loop = piece.loop(corner.loop());
    double out = loop.edge(corner.vertex()).direction(0).angle();
    double turn = Math.toDegrees(direction.angle() - out);
    turn = turn < 0 ? turn + 360 : turn;
    double rest = corner.angle() - turn;
    return turn >= 59 && turn <= 185 && rest >= 59 && rest <= 185;
  }

  /** Anchors at round openings moved off their middles where that saves a line. */
  List<Double> eased() {
    List<Double> moved = new ArrayList<>();
    double from = low;
    for (int i = 0; i < anchors.size(); i++) {
      double at = anchors.get(i);
      double to = i + 1 < anchors.size() ? anchors.get(i + 1) : high;
      double most = slack.getOrDefault(at, 0.0);
      double best = at;
      for (double v : new double[] {from + reach(at - from), to - reach(to - at)}) {
        boolean fewer = parts(v - from) + parts(to - v) < parts(best - from) + parts(to - best);
        if (Math.abs(v - at) <= most && fewer) {
          best = v;
        }
      }
      moved.add(best);
      from = best;
    }
    return moved;
  }

  /**
   * Anchors at round openings moved off their middles by a share of what they may be; empty where
   * there are none, or too many to try.
   */
  List<Double> shifted(double share) {
    if (slack.isEmpty() || slack.size() > FEW) {
      return List.of();
    }
    return anchors.stream().map(v -> v + share * slack.getOrDefault(v, 0.0)).toList();
  }

  /** The length of the whole number of longest panels nearest to a gap. */
  private double reach(double gap) {
    return Math.max(1, Math.rint(gap / spacing())) * spacing();
  }

  /** Where the piece begins, across the lines. */
  double low() {
    return low;
  }

  double span() {
    return high - low;
  }

  double spacing() {
    return piece.ground().limits().spacing();
  }

  /**
   * Numbers of equal parts worth trying: the fewest and some more, and as many as keep panels of a
   * given size the other way within the aspect.
   *
   * @param cross how long panels are along the lines, inches
   */
  List<Integer> counts(double cross) {
    TreeSet<Integer> found = new TreeSet<>();
    int few = fewest();
    for (int n = few; n <= few + (few <= 2 ? 3 : 2); n++) {
      found.add(n);
    }
    double aspect = piece.ground().limits().aspect() + Limits.ASPECT_SHADE;
    int most = (int) Math.floor(span() * aspect / cross);
    int least = (int) Math.ceil(span() / (aspect * cross) - 1e-9);
    for (int n : new int[] {least, least + 1, most}) {
      if (n > few) {
        found.add(n);
      }
    }
    return List.copyOf(found);
  }

  /** The span divided evenly. */
  List<Double> even(int parts) {
    List<Double> places = new ArrayList<>();
    for (int k = 1; k < parts; k++) {
      places.add(low + span() * k / parts);
    }
    return places;
  }

  List<Double> anchorPlaces() {
    return anchors;
  }

  /** The fewest equal parts of the whole span. */
  int fewest() {
    return parts(span());
  }

  /** Into how many parts a gap must be divided at least. */
  int parts(double gap) {
    double spacing = piece.ground().limits().spacing() + Limits.SHADE;
    return Math.max(1, (int) Math.ceil(gap / spacing));
  }

  /** Anchors thinned so that none is nearer than {@code least} to another or the piece's end. */
  List<Double> thinned(double least) {
    List<Double> kept = new ArrayList<>();
    double last = low;
    for (double v : anchors) {
      if (v - last >= least && high - v >= least) {
        kept.add(v);
        last = v;
      }
    }
    return kept;
  }

  /** The long sides of holes that run along the lines, thinned in the same way. */
  List<Double> longSides(double least) {
    TreeSet<Double> sides = new TreeSet<>();
    for (int l = 1; l < piece.loopCount(); l++) {
      for (Edge e : piece.loop(l).edges()) {
        boolean runs = e.turn() == 0 && Math.abs(e.direction(0).dot(across)) < 0.02;
        if (runs && e.length() > LONG * spacing()) {
          sides.add(e.at(0.5).dot(across));
        }
      }
    }
    List<Double> kept = new ArrayList<>();
    double last = low;
    for (double v : sides) {
      if (v - last >= least && high - v >= least) {
        kept.add(v);
        last = v;
      }
    }
    return kept;
  }

  /** The places of lines through {@code fixed}, each gap divided evenly with {@code extra} more. */
  List<Double> divided(List<Double> fixed, int extra) {
    List<Double> places = new ArrayList<>();
    double from = low;
    for (int i = 0; i <= fixed.size(); i++) {
      double to = i < fixed.size() ? fixed.get(i) : high;
      int n = parts(to - from) + extra;
      for (int k = 1; k < n; k++) {
        places.add(from + (to - from) * k / n);
      }
      if (i < fixed.size()) {
        places.add(to);
      }
      from = to;
    }
    return places;
  }

  /** The moves for lines at {@code places}: one for each stretch inside the piece. */
  List<Move> moves(List<Double> places, Move.Reach reach) {
    List<Move> moves = new ArrayList<>();
    for (double v : places) {
      Carrier line = new Carrier.Line(across.times(v), along);
      for (Chord c : piece.chords(line)) {
        moves.add(new Move(line, c.path().at(0.5), reach));
      }
    }
    return moves;
  }
}
