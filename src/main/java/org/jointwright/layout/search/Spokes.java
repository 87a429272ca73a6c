package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Axes;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Chord;
import org.jointwright.layout.piece.Limits;
import org.jointwright.layout.piece.Loop;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** Patterns about the middle of an arc: ribs of bands and rings, diameters of discs, lanes. */
final class Spokes {
  private static final double SAME = 1;
  private static final int MOST_CENTRES = 3;

  private final Piece piece;
  private final Point centre;
  private final double inner;
  private final double outer;

  private Spokes(Piece piece, Point centre, double inner, double outer) {
    this.piece = piece;
    this.centre = centre;
    this.inner = inner;
    this.outer = outer;
  }

  /** All patterns about the middles of a piece's own arcs. */
  static List<Pattern> of(Piece piece) {
    List<Pattern> found = new ArrayList<>();
    for (Point c : centres(piece)) {
      double inner = Double.POSITIVE_INFINITY;
      double outer = 0;
      for (int l = 0; l < piece.loopCount(); l++) {
        Loop loop = piece.loop(l);
        for (int i = 0; i < loop.size(); i++) {
          if (loop.edge(i) instanceof Arc a && a.centre().distance(c) < SAME) {
            inner = Math.min(inner, a.radius());
            outer = Math.max(outer, a.radius());
          }
        }
      }
      Spokes s = new Spokes(piece, c, inner, outer);
      if (piece.contains(c)) {
        found.addAll(s.disc());
      } else {
        found.addAll(s.ribs());
      }
    }
    return found;
  }

  private static List<Point> centres(Piece piece) {
    List<Point> found = new ArrayList<>();
    List<Double> lengths = new ArrayList<>();
    for (int l = 0; l < piece.loopCount(); l++) {
      Loop loop = piece.loop(l);
      for (int i = 0; i < loop.size(); i++) {
        if (loop.isHard(i) && loop.edge(i) instanceof Arc a && a.length() > 12) {
          add(found, lengths, a);
        }
      }
    }
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      order.add(i);
    }
    order.sort((a, b) -> Double.compare(lengths.get(b), lengths.get(a)));
    return order.stream().limit(MOST_CENTRES).map(found::get).toList();
  }

  private static void add(List<Point> found, List<Double> lengths, Arc a) {
    for (int i = 0; i < found.size(); i++) {
      if (found.get(i).distance(a.centre()) < SAME) {
        lengths.set(i, lengths.get(i) + a.length());
        return;
      }
    }
    found.add(a.centre());
    lengths.add(a.length());
  }

  /** Diameters, and square grids of lines near the middle. */
  private List<Pattern> disc() {
    List<Pattern> found = new ArrayList<>();
    Point axis = Axes.of(piece).getFirst();
    for (int diameters = 1; diameters <= 3; diameters++) {
      for (double turn : new double[] {0, Math.PI / 4}) {
        List<Move> moves = new ArrayList<>();
        for (int k = 0; k < diameters; k++) {
          Point u = axis.turned(turn + Math.PI * k / diameters);
          moves.add(new Move(new Carrier.Line(centre, u), seed(u, 0.4), Move.Reach.THROUGH));
        }
        found.add(Pattern.on(piece, moves));
      }
    }
    found.addAll(Cores.of(piece, centre, outer, axis));
    List<double[]> offsets = new ArrayList<>();
    offsets.add(new double[] {0});
    for (double a : new double[] {0.26, 0.33, 0.4, 0.5}) {
      offsets.add(new double[] {-a, a});
      offsets.add(new double[] {-a, 0, a});
    }
    for (double[] rows : offsets) {
      for (double[] columns : offsets) {
        List<Move> moves = new ArrayList<>(parallels(axis, rows));
        moves.addAll(parallels(axis.left(), columns));
        found.add(Pattern.on(piece, moves));
      }
    }
    return found;
  }

  private Point seed(Point u, double share) {
    return centre.plus(u.times(outer * share));
  }

  private List<Move> parallels(Point u, double[] offsets) {
    List<Move> moves = new ArrayList<>();
    for (double o : offsets) {
      Point on = centre.plus(u.left().times(o * outer));
      Carrier line = new Carrier.Line(on, u);
      // Not half way: another line may cross there.
      moves.add(new Move(line, on.plus(u.times(0.13 * outer)), Move.Reach.THROUGH));
    }
    return moves;
  }

  /** Radial ribs over the stretch where the piece is bounded by arcs about the centre. */
  private List<Pattern> ribs() {
    List<Pattern> found = new ArrayList<>();
    double[] range = range();
    double from = range[0];
    double sweep = range[1];
    if (sweep <= 0) {
      return found;
    }
    double spacing = piece.ground().limits().spacing() + Limits.SHADE;
    boolean round = sweep > 2 * Math.PI - 0.01;
    int few = Math.max(round ? 3 : 1, (int) Math.ceil(sweep * outer / (spacing * 1.03)));
    double width = outer - inner;
    double aspect = piece.ground().limits().aspect();
    // The inner side's bow adds to the width; two fewer than without it covers that.
    int byAspect = (int) Math.ceil(sweep * outer / (aspect * Math.max(width, 12))) - 2;
    for (int lanes = 1; lanes <= 2; lanes++) {
      int least = lanes == 1 ? few : Math.max(few, 2 * byAspect);
      for (int n = few; n <= least + 3 && n < 80; n++) {
        for (int ends = 0; ends <= (round ? 0 : 1); ends++) {
          List<Move> moves = radial(from, sweep, n, ends == 1, round);
          if (lanes == 2 && inner < outer) {
            moves.addAll(0, lane(from, sweep));
          }
          if (!moves.isEmpty()) {
            found.add(Pattern.on(piece, moves));
          }
        }
      }
      addByAspect(found, lanes, byAspect, from, sweep, round);
    }
    return found;
  }

  private void addByAspect(
      List<Pattern> found, int lanes, int count, double from, double sweep, boolean round) {
    for (int n = Math.max(2, count); n <= count + 4 && n < 80; n++) {
      for (boolean ends : new boolean[] {false, true}) {
        List<Move> moves = radial(from, sweep, n, ends, round);
        if (lanes == 2) {
          moves.addAll(0, lane(from, sweep));
        }
        if (!moves.isEmpty()) {
          found.add(Pattern.on(piece, moves));
        }
      }
    }
  }

  private List<Move> lane(double from, double sweep) {
    if (outer - inner < 12) {
      return List.of();
    }
    Carrier.Circle circle = new Carrier.Circle(centre, (inner + outer) / 2);
    Point seed = centre.plus(new Point(circle.radius(), 0).turned(from + sweep * 0.47));
    return List.of(new Move(circle, seed, Move.Reach.PIECE));
  }

  private List<Move> radial(double from, double sweep, int parts, boolean ends, boolean round) {
    List<Move> moves = new ArrayList<>();
    int first = ends || round ? 0 : 1;
    int last = ends ? parts : parts - 1;
    for (int k = first; k <= last; k++) {
      Point u = new Point(1, 0).turned(from + sweep * k / parts);
      Carrier line = new Carrier.Line(centre, u);
      for (Chord c : piece.chords(line)) {
        Point middle = c.path().at(0.5);
        boolean ahead = middle.minus(centre).dot(u) > 0;
        if (ahead && middle.distance(centre) < outer + 12) {
          // Not half way: a lane may run there.
          Point seed = c.path().at(0.37);
          moves.add(new Move(line, seed, Move.Reach.THROUGH));
        }
      }
    }
    return moves;
  }

  /** The first angle and the sweep of the arcs about the centre, radians. */
  private double[] range() {
    double best = 0;
    double start = 0;
    double total = 0;
    double most = 0;
    for (int l = 0; l < piece.loopCount(); l++) {
      Loop loop = piece.loop(l);
      double round = 0;
      for (Edge e : loop.edges()) {
        if (e instanceof Arc a && a.centre().distance(centre) < SAME) {
          round += Math.abs(a.sweep());
          if (Math.abs(a.sweep()) > best) {
            best = Math.abs(a.sweep());
            start = (a.sweep() > 0 ? a.start() : a.end()).minus(centre).angle();
          }
        }
      }
      total = Math.max(total, round);
      most = Math.max(most, best);
    }
    if (total > 2 * Math.PI - 0.01) {
      return new double[] {0, 2 * Math.PI};
    }
    return new double[] {start, most};
  }
}
