package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.joint.Source;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Tally;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * Sets a whole line anew, square where it slants or through an open tee, and moves the lines that
 * run its way over with it, so that the gaps between them grow and shrink alike. A climb moves one
 * cut at a time and would have to pass through panels too long.
 */
final class Squaring {
  /** What leans more than this from a direction runs another way: the sine of 30 degrees. */
  private static final double LEANS = 0.5;

  /** Ends so near to each other meet, inches. */
  private static final double MEETS = 1;

  /** Lines farther from a tee than this share of the spacing are not brought to it. */
  private static final double NEAR = 0.6;

  /** The cosine of the angle within which two lines run one way. */
  private static final double PARALLEL = Math.cos(Math.toRadians(0.5));

  /** Lines farther apart than this on both sides of a box-out are two, inches. */
  private static final double ACROSS = 12;

  /** Nearer to one line than this they are on it, inches. */
  private static final double HAIR = 0.1;

  private static final double[] PIVOTS = {0, 1, 0.5};

  private final Draft draft;
  private final List<Laid> lines = new ArrayList<>();
  private final Set<List<Move>> tried = new LinkedHashSet<>();

  private Squaring(Draft draft) {
    this.draft = draft;
    for (int i = 0; i < draft.moves().size(); i++) {
      lines.add(draft.line(i));
    }
  }

  /** Drafts with one of the slanted lines of {@code draft} square, or a line on through a tee. */
  static List<Draft> of(Draft base, Draft draft) {
    Squaring squaring = new Squaring(draft);
    squaring.square();
    squaring.close();
    return squaring.tried.stream().map(moves -> draft.recut(base, moves)).toList();
  }

  /** Drafts with two lines that end on one box-out from both sides set on one line. */
  static List<Draft> across(Draft base, Draft draft) {
    Squaring squaring = new Squaring(draft);
    for (int i = 0; i < squaring.lines.size(); i++) {
      for (int j = 0; j < squaring.lines.size(); j++) {
        squaring.across(i, j);
      }
    }
    return squaring.tried.stream().map(moves -> draft.recut(base, moves)).toList();
  }

  private void across(int i, int j) {
    Laid one = lines.get(i);
    Laid other = lines.get(j);
    for (boolean last : new boolean[] {false, true}) {
      for (boolean first : new boolean[] {false, true}) {
        Optional<String> box = box(one.tag(last));
        if (i != j
            && box.isPresent()
            && box.equals(box(other.tag(first)))
            && one.move().carrier() instanceof Carrier.Line l
            && other.onward(first).dot(one.onward(last)) < -PARALLEL) {
          double off = l.distance(other.end(first));
          if (off > HAIR && off < ACROSS) {
            set(whole(j, l.unit()), l.unit(), one.end(last));
          }
        }
      }
    }
  }

  /** The object whose box-out an end stands on. */
  private Optional<String> box(int tag) {
    return tag < 0 && draft.ground().source(tag) instanceof Source.OnBoxOut b
        ? Optional.of(b.fixed())
        : Optional.empty();
  }

  private void square() {
    List<Integer> slanted = draft.slanted();
    for (int i = 0; i < lines.size(); i++) {
      if (slanted.contains(draft.lines().indexOf(lines.get(i)))) {
        for (Point axis : draft.ground().axes()) {
          for (Point u : List.of(axis, axis.left())) {
            if (runs(i, u)) {
              List<Integer> whole = whole(i, u);
              for (int k : whole) {
                for (double pivot : PIVOTS) {
                  set(whole, u, lines.get(k).path().at(pivot));
                }
              }
            }
          }
        }
      }
    }
  }

  private void close() {
    double near = NEAR * draft.ground().limits().spacing();
    for (Tally.Tee tee : draft.tally().tees()) {
      for (int i = 0; i < lines.size(); i++) {
        if (runs(i, tee.onward())
            && draft.lines().indexOf(lines.get(i)) != tee.line()
            && lines.get(i).move().carrier().distance(tee.at()) < near) {
          Point u = lines.get(i).move().carrier().direction(0);
          set(whole(i, u), u, tee.at());
        }
      }
    }
  }

  private boolean runs(int i, Point u) {
    return lines.get(i).move().carrier() instanceof Carrier.Line l
        && Math.abs(l.unit().cross(u)) < LEANS;
  }

  /** The cuts that run one way and meet end to end with cut {@code i}. */
  private List<Integer> whole(int i, Point u) {
    List<Integer> whole = new ArrayList<>(List.of(i));
    for (int k = 0; k < whole.size(); k++) {
      for (int j = 0; j < lines.size(); j++) {
        if (!whole.contains(j) && runs(j, u) && meet(lines.get(whole.get(k)), lines.get(j))) {
          whole.add(j);
        }
      }
    }
    return whole;
  }

  private static boolean meet(Laid one, Laid other) {
    return one.end(true).distance(other.end(false)) < MEETS
        || one.end(false).distance(other.end(true)) < MEETS
        || one.end(true).distance(other.end(true)) < MEETS
        || one.end(false).distance(other.end(false)) < MEETS;
  }

  /** Some cuts on the line through {@code p} along {@code u}: alone, and the others moved over. */
  private void set(List<Integer> whole, Point u, Point p) {
    Point side = u.left();
    double was = 0;
    for (int k : whole) {
      was += off(k, p, side) / whole.size();
    }
    double low = Math.min(0, was) - MEETS;
    double high = Math.max(0, was) + MEETS;
    for (Edge e : draft.ground().loops().getFirst().edges()) {
      for (double share : new double[] {0, 0.5}) {
        low = Math.min(low, e.at(share).minus(p).dot(side));
        high = Math.max(high, e.at(share).minus(p).dot(side));
      }
    }
    List<Move> alone = new ArrayList<>();
    List<Move> over = new ArrayList<>();
    for (int k = 0; k < lines.size(); k++) {
      Move move = lines.get(k).move();
      Move set = whole.contains(k) ? move.on(new Carrier.Line(p, u)) : move;
      alone.add(set);
      if (!whole.contains(k) && runs(k, u) && move.carrier() instanceof Carrier.Line l) {
        double at = off(k, p, side);
        double beyond = at > was ? high : low;
        double to = beyond - (beyond - at) * beyond / (beyond - was);
        set = move.on(l.shifted((to - at) * Math.signum(l.unit().dot(u))));
      }
      over.add(set);
    }
    tried.add(alone);
    tried.add(over);
  }

  private double off(int k, Point p, Point side) {
    return lines.get(k).path().at(0.5).minus(p).dot(side);
  }
}
