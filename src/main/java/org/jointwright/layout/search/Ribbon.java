package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Carriers;
import org.jointwright.layout.piece.Limits;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * Patterns of a band that runs between two long sides of lines and arcs: ribs that meet both sides
 * at equal angles, which are radial where the sides share a middle and square where they are
 * straight, and lines along the band, concentric in each bend.
 */
final class Ribbon {
  /** A side that changes direction this often is traced, and its bends are not told apart. */
  private static final int MOST_RUNS = 5;

  private static final int STEPS = 96;
  private static final int HALVINGS = 40;
  private static final double SEED = 0.42;

  private final Piece piece;
  private final Rail left;
  private final Rail right;

  /** A long side, run the same way as the other. */
  private record Rail(List<Edge> edges, double length) {
    static Rail of(List<Edge> edges) {
      return new Rail(edges, edges.stream().mapToDouble(Edge::length).sum());
    }

    /** The edge at a place and the share along it. */
    <T> T at(double place, java.util.function.BiFunction<Edge, Double, T> get) {
      double rest = Math.clamp(place, 0, 1) * length;
      for (Edge e : edges) {
        if (rest <= e.length()) {
          return get.apply(e, e.length() == 0 ? 0 : rest / e.length());
        }
        rest -= e.length();
      }
      return get.apply(edges.getLast(), 1.0);
    }

    Point point(double place) {
      return at(place, Edge::at);
    }

    Point direction(double place) {
      return at(place, Edge::direction);
    }

    List<Double> breaks() {
      List<Double> found = new ArrayList<>();
      double sum = 0;
      for (Edge e : edges.subList(0, edges.size() - 1)) {
        sum += e.length();
        found.add(sum / length);
      }
      return found;
    }
  }

  /** Where a rib stands, on the left side and on the right. */
  private record Rib(Point from, Point to) {
    Point at(double share) {
      return from.towards(to, share);
    }

    double width() {
      return from.distance(to);
    }
  }

  private Ribbon(Piece piece, Rail left, Rail right) {
    this.piece = piece;
    this.left = left;
    this.right = right;
  }

  /** The patterns of a four-sided piece along each pair of sides that has an arc. */
  static List<Pattern> of(Piece piece) {
    List<Pattern> found = new ArrayList<>();
    Fractions four = Fractions.of(piece);
    if (!four.isFourSided()) {
      return found;
    }
    for (int k = 0; k < 2; k++) {
      List<Edge> one = four.side(k);
      List<Edge> other = four.side(k + 2).reversed().stream().map(Edge::reversed).toList();
      boolean bent = one.stream().anyMatch(e -> e instanceof Arc);
      bent |= other.stream().anyMatch(e -> e instanceof Arc);
      if (bent) {
        new Ribbon(piece, Rail.of(one), Rail.of(other)).add(found);
      }
    }
    return found;
  }

  private void add(List<Pattern> found) {
    List<Double> bends = bends();
    double widest = 0;
    for (int i = 0; i <= STEPS; i++) {
      widest = Math.max(widest, rib((double) i / STEPS).width());
    }
    int fewest = Math.max(1, (int) Math.ceil(widest / (spacing() * Limits.BOW)));
    for (int lanes = fewest; lanes <= fewest + 1; lanes++) {
      for (int more = 0; more <= 2; more++) {
        if (lanes == 1) {
          add(found, List.of(), lanes, more);
        }
        if (!bends.isEmpty() || lanes > 1) {
          add(found, bends, lanes, more);
        }
      }
    }
  }

  private void add(List<Pattern> found, List<Double> bends, int lanes, int more) {
    List<Move> moves = new ArrayList<>();
    List<Move> along = new ArrayList<>();
    List<Move> ribs = new ArrayList<>();
    for (int i = 0; i <= bends.size(); i++) {
      double from = i == 0 ? 0 : bends.get(i - 1);
      double to = i == bends.size() ? 1 : bends.get(i);
      if (i > 0) {
        moves.add(across(from, Move.Reach.PIECE));
      }
      for (int lane = 1; lane < lanes; lane++) {
        along.add(lane(from, to, (double) lane / lanes));
      }
      for (double place : shares(from, to, lanes, more)) {
        ribs.add(across(place, Move.Reach.THROUGH));
      }
    }
    moves.addAll(along);
    moves.addAll(ribs);
    if (!moves.isEmpty()) {
      found.add(Pattern.on(piece, moves));
    }
  }

  private double spacing() {
    return piece.ground().limits().spacing() + Limits.SHADE;
  }

  /** The places where a side goes from one line or arc to the next, those of both sides as one. */
  private List<Double> bends() {
    TreeSet<Double> all = new TreeSet<>(left.breaks());
    for (double t : right.breaks()) {
      all.add(opposite(t));
    }
    List<Double> kept = new ArrayList<>();
    double apart = 12 / left.length();
    for (double s : all) {
      if (s > apart && s < 1 - apart && (kept.isEmpty() || s - kept.getLast() > apart)) {
        kept.add(s);
      }
    }
    return kept.size() < MOST_RUNS ? kept : List.of();
  }

  /** The place on the left side whose rib ends at a place of the right one. */
  private double opposite(double place) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double s = (low + high) / 2;
      if (across(left.point(s), left.direction(s), place) < 0) {
        high = s;
      } else {
        low = s;
      }
    }
    return (low + high) / 2;
  }

  /** How far a place of the right side lies ahead of a rib square between the two sides. */
  private double across(Point p, Point direction, double place) {
    return direction.plus(right.direction(place)).dot(right.point(place).minus(p));
  }

  private Rib rib(double place) {
    return new Rib(left.point(place), right.point(opposed(place)));
  }

  /** The place on the right side where the rib from a place of the left one ends. */
  private double opposed(double place) {
    Point p = left.point(place);
    Point u = left.direction(place);
    double low = 0;
    double high = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double t = (low + high) / 2;
      if (across(p, u, t) < 0) {
        low = t;
      } else {
        high = t;
      }
    }
    return (low + high) / 2;
  }

  private Move across(double place, Move.Reach reach) {
    Rib r = rib(place);
    return new Move(Carrier.Line.through(r.from(), r.to()), r.at(SEED), reach);
  }

  /** Places of ribs so that each panel between takes the same part of what it may be long. */
  private List<Double> shares(double from, double to, int lanes, int more) {
    double[] sum = new double[STEPS + 1];
    Rib last = rib(from);
    for (int i = 1; i <= STEPS; i++) {
      Rib next = rib(from + (to - from) * i / STEPS);
      double length = Math.max(last.from().distance(next.from()), last.to().distance(next.to()));
      double aspect = piece.ground().limits().aspect() * (last.width() + next.width()) / 2 / lanes;
      sum[i] = sum[i - 1] + length / Math.min(spacing() * Limits.BOW, aspect);
      last = next;
    }
    int parts = Math.max(1, (int) Math.ceil(sum[STEPS] - 0.02)) + more;
    List<Double> found = new ArrayList<>();
    for (int k = 1, i = 0; k < parts; k++) {
      double wanted = sum[STEPS] * k / parts;
      while (sum[i + 1] < wanted) {
        i++;
      }
      double share = (i + (wanted - sum[i]) / (sum[i + 1] - sum[i])) / STEPS;
      found.add(from + (to - from) * share);
    }
    return found;
  }

  /**
   * The line along the band at a share of its width: one circle, or one straight line. Through the
   * ribs' own points, so that it meets the next bend's whatever the file rounded off their middles.
   */
  private Move lane(double from, double to, double share) {
    Point start = rib(from).at(share);
    Point end = rib(to).at(share);
    Point seed = rib(from + 0.47 * (to - from)).at(share);
    Edge path = Arc.through(start, rib((from + to) / 2).at(share), end);
    Carrier carrier = Carriers.of(path);
    return new Move(carrier, carrier.at(carrier.place(seed)), Move.Reach.PIECE);
  }
}
