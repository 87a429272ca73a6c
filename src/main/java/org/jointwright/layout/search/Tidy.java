package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Bent;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Ground;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Move;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * Finishes a draft the way a finisher would: joints that are nearly square are made square (S10),
 * and ends on straight edges stand at whole inches from a corner (S6).
 */
final class Tidy {
  /** How much dearer squaring up one joint may make the slab. */
  private static final double SQUARE_WORTH = 1.01;

  /** How much dearer bringing one joint to whole inches may make the slab. */
  private static final double MARK_WORTH = 1.002;

  private static final double NEARLY = Math.sin(Math.toRadians(15));
  private static final double EXACTLY = Math.sin(Math.toRadians(0.005));

  /** Joints times pieces from which on no joint is made anew by itself. */
  private static final int LARGE = 12_000;

  private static final double AT_CORNER = 0.5;

  private final Draft base;
  private final Score score;
  private final double step;

  Tidy(Draft base, Score score, boolean metric) {
    this.base = base;
    this.score = score;
    this.step = metric ? 10 / 25.4 : 1;
  }

  Draft tidy(Draft draft) {
    Draft d = draft;
    boolean small = d.moves().size() * d.pieces().size() < LARGE;
    for (int i = 0; i < d.moves().size() && small; i++) {
      d = squared(d, i);
    }
    Draft all = allMarked(d);
    if (!all.equals(d)) {
      return all;
    }
    for (int i = 0; i < d.moves().size() && small; i++) {
      d = marked(d, i);
    }
    return d;
  }

  /** Every joint at once brought to its nearest marks; the same draft when that is not as good. */
  private Draft allMarked(Draft d) {
    List<Move> moves = new ArrayList<>();
    for (int i = 0; i < d.moves().size(); i++) {
      Laid line = line(d, i);
      moves.add(markedMoves(d.ground(), line).stream().findFirst().orElse(line.move()));
    }
    Draft tried = base.cutAll(moves);
    return isAsGood(tried, d, MARK_WORTH) ? tried : d;
  }

  private static Laid line(Draft d, int i) {
    return d.line(i);
  }

  private Draft replaced(Draft d, int i, Move by) {
    List<Move> moves = d.moves();
    Draft r = base.cutAll(moves.subList(0, i));
    return r.cut(by).map(x -> x.cutAll(moves.subList(i + 1, moves.size()))).orElse(r);
  }

  private boolean isAsGood(Draft tried, Draft was, double worth) {
    return tried.lines().size() == was.lines().size()
        && tried.tally().broken() <= was.tally().broken()
        && tried.tally().excess() <= was.tally().excess() + 1e-9
        && tried.tally().tees().size() <= was.tally().tees().size()
        && score.of(tried) <= worth * score.of(was) + 1e-9;
  }

  private Draft squared(Draft d, int i) {
    Laid line = line(d, i);
    if (line.move().carrier() instanceof Bent bent) {
      return armsSquared(d, i, bent);
    }
    if (!(line.move().carrier() instanceof Carrier.Line l)) {
      return d;
    }
    for (Point axis : d.ground().axes()) {
      for (Point u : List.of(axis, axis.left())) {
        double off = Math.abs(u.cross(l.unit()));
        if (off < NEARLY && off > EXACTLY) {
          for (double share : new double[] {0.5, 0, 1}) {
            Point pivot = line.path().at(share);
            Carrier square = new Carrier.Line(pivot, u);
            Point seed = square.at(square.place(line.move().seed()));
            Draft tried = replaced(d, i, new Move(square, seed, line.move().reach()));
            if (isAsGood(tried, d, SQUARE_WORTH)) {
              return tried;
            }
          }
        }
      }
    }
    return d;
  }

  /** A bent cut, each nearly square arm made square about the bend. */
  private Draft armsSquared(Draft draft, int i, Bent bent) {
    Draft d = draft;
    Bent now = bent;
    for (boolean last : new boolean[] {false, true}) {
      for (Point u : directions(d.ground(), last ? now.second() : now.first())) {
        Bent square =
            last ? new Bent(now.bend(), now.first(), u) : new Bent(now.bend(), u, now.second());
        Draft tried = replaced(d, i, new Move(square, square.bend(), d.moves().get(i).reach()));
        if (isAsGood(tried, d, SQUARE_WORTH)) {
          d = tried;
          now = square;
          break;
        }
      }
    }
    return d;
  }

  /** The square directions that one is nearly along. */
  private static List<Point> directions(Ground ground, Point near) {
    List<Point> found = new ArrayList<>();
    for (Point axis : ground.axes()) {
      for (Point u : List.of(axis, axis.left(), axis.times(-1), axis.left().times(-1))) {
        double off = Math.abs(u.cross(near));
        if (u.dot(near) > 0 && off < NEARLY && off > EXACTLY) {
          found.add(u);
        }
      }
    }
    return found;
  }

  private Draft marked(Draft d, int i) {
    for (Move m : markedMoves(d.ground(), line(d, i))) {
      Draft tried = replaced(d, i, m);
      if (isAsGood(tried, d, MARK_WORTH)) {
        return tried;
      }
    }
    return d;
  }

  /** A joint brought to whole inches, the nearest first. */
  private List<Move> markedMoves(Ground ground, Laid line) {
    if (!(line.move().carrier() instanceof Carrier.Line l)) {
      return List.of();
    }
    List<Point> starts = marks(ground, line, false);
    List<Point> ends = marks(ground, line, true);
    List<Move> found = new ArrayList<>();
    for (int k = 0; k < Math.max(starts.size(), ends.size()); k++) {
      Carrier moved;
      if (starts.isEmpty() || ends.isEmpty()) {
        Point p = starts.isEmpty() ? ends.get(k) : starts.get(k);
        moved = new Carrier.Line(p, l.unit());
      } else if (isSquare(ground, l.unit())) {
        // Both ends from one mark, so that a square joint stays square.
        Point p = k < starts.size() ? starts.get(k) : ends.get(k);
        moved = new Carrier.Line(p, l.unit());
      } else {
        Point a = starts.get(Math.min(k, starts.size() - 1));
        Point b = ends.get(Math.min(k, ends.size() - 1));
        if (a.distance(b) < 1) {
          continue;
        }
        moved = Carrier.Line.through(a, b);
      }
      found.add(line.move().on(moved));
    }
    return found;
  }

  private static boolean isSquare(Ground ground, Point u) {
    return ground.axes().stream()
        .anyMatch(a -> Math.min(Math.abs(a.cross(u)), Math.abs(a.dot(u))) < EXACTLY);
  }

  /**
   * Places at whole inches near an end, nearest first; only the end itself where it is at a corner.
   */
  private List<Point> marks(Ground ground, Laid line, boolean last) {
    Point at = line.end(last);
    int tag = line.tag(last);
    if (tag >= 0) {
      return List.of();
    }
    Edge edge = ground.edge(tag);
    if (!(edge instanceof Segment given)) {
      return List.of();
    }
    // Of two marks as near as each other the same one, whichever way the outline runs.
    boolean ahead =
        given.start().x() < given.end().x() - AT_CORNER
            || (given.start().x() < given.end().x() + AT_CORNER
                && given.start().y() < given.end().y());
    Segment s = ahead ? given : given.reversed();
    double along = s.start().distance(at);
    double length = s.length();
    if (along < AT_CORNER || length - along < AT_CORNER) {
      return List.of(at);
    }
    Point u = s.direction(0);
    double first = Math.round(along / step) * step;
    double second = length - Math.round((length - along) / step) * step;
    boolean firstNearer = Math.abs(first - along) <= Math.abs(second - along) + 1e-6;
    double near = firstNearer ? first : second;
    double far = firstNearer ? second : first;
    double next = near > along ? near - step : near + step;
    return List.of(
        s.start().plus(u.times(near)), s.start().plus(u.times(far)), s.start().plus(u.times(next)));
  }
}
