package org.jointwright.proof.build;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jointwright.proof.read.Reading;
import org.jointwright.proof.read.Reading.Bow;
import org.jointwright.proof.read.Reading.Side;
import org.jointwright.shape.Mirror;
import org.jointwright.shape.Point;

/**
 * Where the corners are, by all sides, diagonals and offsets at once: the places that fit the
 * printed figures best (least squares, Gauss-Newton). Two pulls of a tape leave a corner two
 * places, one on each side of the string; which is meant a finisher sees from where the letters
 * stand on the plan, and so the search starts there. Nothing else hangs on where they stand.
 */
final class Net {
  /** Corners nearer to a side than this are said to stand on it; inches. */
  private static final double ON = 1.0 / 16;

  private static final int ROUNDS = 100;

  /** How much corners are held where they are: more at first, so that none leaps. */
  private static final double FIRM = 1e-3;

  /** The whole may lie and turn as it likes; without any hold the sums would have no answer. */
  private static final double LIGHT = 1e-9;

  /** Corners that move less than this have found their places; inches. */
  private static final double STILL = 1e-7;

  /** A letter stands within half of this of its corner, as a rule; millimetres. */
  private static final double NEAR = 30;

  /**
   * A pull that misses by more than a share of the worst, up to this one, is among the bad ones.
   */
  private static final double MOST_SHARE = 0.6;

  /** The share of the room of letters that tells nothing. */
  private static final double BLUR = 6;

  /** Points nearer to each other say no line; inches. */
  private static final double APART = 1;

  private static final double MM_PER_INCH = 25.4;

  private final List<String> names;
  private final List<Pull> pulls = new ArrayList<>();
  private final double[] start;
  private final double spread;

  Net(Reading reading) {
    names = List.copyOf(reading.letters().keySet());
    start = new double[2 * names.size()];
    spread = NEAR * reading.scale() / MM_PER_INCH;
    int next = 0;
    for (Point p : reading.letters().values()) {
      start[next++] = p.x() * reading.scale() / MM_PER_INCH;
      start[next++] = -p.y() * reading.scale() / MM_PER_INCH;
    }
    reading.sides().values().forEach(s -> side(s, reading.arcs()));
    for (Reading.Tie t : reading.ties()) {
      pull(t.from(), t.to(), v -> v.of(t.length()));
    }
    reading.bends().forEach(this::offset);
  }

  private void side(Side s, Map<String, Bow> arcs) {
    Bow bow = arcs.get(s.name());
    if (bow != null) {
      pull(s.from(), s.to(), v -> v.of(bow.chord()));
      return;
    }
    pull(s.from(), s.to(), v -> v.of(s.length()));
    s.corners()
        .forEach(
            (letter, along) -> {
              pull(s.from(), letter, v -> v.of(along));
              pull(letter, s.to(), v -> v.of(s.length()) - v.of(along));
              offString(s.from(), letter, s.to(), v -> 0, ON);
            });
  }

  private void offset(Reading.Bend bend) {
    bend.corner()
        .ifPresent(
            letter -> {
              String[] ends = bend.at().side().split("–", -1);
              offString(ends[0], letter, ends[1], v -> bend.at().sign() * v.of(bend.at().off()), 0);
              pull(
                  ends[0], letter, v -> Math.hypot(v.of(bend.at().along()), v.of(bend.at().off())));
            });
  }

  private void pull(String from, String to, java.util.function.ToDoubleFunction<Values> says) {
    add(new Pull(from + "–" + to, names.indexOf(from), -1, names.indexOf(to), says, 0));
  }

  private void offString(
      String from,
      String on,
      String to,
      java.util.function.ToDoubleFunction<Values> says,
      double slack) {
    if (names.contains(on)) {
      int corner = names.indexOf(on);
      add(new Pull(on, names.indexOf(from), corner, names.indexOf(to), says, slack));
    }
  }

  /** Letters that no corner of the plan has hold nothing; the reading says that they are wrong. */
  private void add(Pull pull) {
    if (pull.from() >= 0 && pull.to() >= 0) {
      pulls.add(pull);
    }
  }

  List<String> names() {
    return names;
  }

  List<Pull> pulls() {
    return pulls;
  }

  /** What the pulls say. */
  double[] said(Values values) {
    return pulls.stream().mapToDouble(p -> p.says().applyAsDouble(values)).toArray();
  }

  /**
   * The corners' coordinates, x and y by turns, inches; the whole turned and moved at will.
   *
   * @param attempt 0 to begin where the letters stand, else from other places near them: a letter
   *     may stand on the wrong side of a string
   */
  double[] solve(Values values, int attempt) {
    double[] said = said(values);
    double[] from = start.clone();
    Random places = new Random(attempt);
    for (int i = 0; attempt > 0 && i < from.length; i++) {
      from[i] += (places.nextDouble() - 0.5) * spread;
    }
    return solve(said, from);
  }

  /**
   * How far corners lie from their letters, the whole turned and moved to lie as near as it can:
   * the sum of the squares, square inches.
   */
  double stray(double[] at) {
    int n = at.length / 2;
    double[] middle = new double[4];
    for (int i = 0; i < at.length; i++) {
      middle[i % 2] += start[i] / n;
      middle[2 + i % 2] += at[i] / n;
    }
    double size = 0;
    double along = 0;
    double across = 0;
    for (int i = 0; i < at.length; i += 2) {
      double x = start[i] - middle[0];
      double y = start[i + 1] - middle[1];
      double u = at[i] - middle[2];
      double v = at[i + 1] - middle[3];
      size += x * x + y * y + u * u + v * v;
      along += x * u + y * v;
      across += x * v - y * u;
    }
    return size - 2 * Math.hypot(along, across);
  }

  /**
   * The same, begun where corners were found before: only those that the worst pulls hang on are
   * looked for anew, near their letters.
   */
  double[] solveAgain(Values values, double[] found, int attempt) {
    double[] said = said(values);
    double[] miss = new double[said.length];
    double worst = 0;
    for (int i = 0; i < said.length; i++) {
      miss[i] = Math.abs(said[i] - pulls.get(i).is(found));
      worst = Math.max(worst, miss[i]);
    }
    Random places = new Random(attempt);
    double share = places.nextDouble() * MOST_SHARE;
    BitSet astray = new BitSet();
    for (int i = 0; i < said.length; i++) {
      if (miss[i] > share * worst) {
        astray.set(pulls.get(i).from());
        astray.set(pulls.get(i).to());
        if (pulls.get(i).on() >= 0) {
          astray.set(pulls.get(i).on());
        }
      }
    }
    double[] from = found.clone();
    for (int i = 0; i < from.length; i++) {
      if (astray.get(i / 2)) {
        from[i] = start[i] + (places.nextDouble() - 0.5) * spread;
      }
    }
    return solve(said, from);
  }

  /**
   * Begun where a corner is taken for the other side of the line that it hangs on: the places where
   * that may close as well, or better.
   *
   * @param within how much its pulls may miss there at the least, inches
   */
  List<Turned> mirrored(Values values, double[] found, double within) {
    double[] said = said(values);
    List<Turned> others = new ArrayList<>();
    for (int corner = 0; corner < names.size(); corner++) {
      for (Point other : over(said, found, corner, within)) {
        double[] from = found.clone();
        from[2 * corner] = other.x();
        from[2 * corner + 1] = other.y();
        others.add(new Turned(corner, solve(said, from)));
      }
    }
    return others;
  }

  /** Where all corners are with one of them taken for the other side of a line. */
  static final class Turned {
    private final int corner;
    private final double[] at;

    private Turned(int corner, double[] at) {
      this.corner = corner;
      this.at = at;
    }

    /** The number of the corner. */
    int corner() {
      return corner;
    }

    /** The corners' coordinates, x and y by turns, inches. */
    double[] at() {
      return at.clone();
    }

    /** How far off the corner is then, inches. */
    double off(double[] found) {
      return point(at, corner).distance(point(found, corner));
    }
  }

  /** Whether a letter cannot tell two places so far apart; inches. */
  boolean isBlurred(double apart) {
    return apart < spread / BLUR;
  }

  /** A tape to a corner: whence, and how long it is said to be. */
  private record Hold(Point from, double said) {
    double miss(Point at) {
      return Math.abs(from.distance(at) - said);
    }
  }

  /** Over the line of all its tapes, and of all but the one that misses most. */
  private List<Point> over(double[] said, double[] found, int corner, double within) {
    List<Hold> holds = new ArrayList<>();
    for (int i = 0; i < said.length; i++) {
      Pull p = pulls.get(i);
      if (p.on() == corner) {
        // The string says on which side it lies.
        return List.of();
      }
      if (p.on() < 0 && (p.from() == corner || p.to() == corner)) {
        holds.add(new Hold(point(found, p.from() == corner ? p.to() : p.from()), said[i]));
      }
    }
    Point is = point(found, corner);
    holds.sort(Comparator.comparingDouble(h -> h.miss(is)));
    List<Point> others = new ArrayList<>();
    for (int count = holds.size(); count >= Math.max(2, holds.size() - 1); count--) {
      List<Point> line = holds.subList(0, count).stream().map(Hold::from).toList();
      if (line.stream().allMatch(p -> p.distance(line.getFirst()) < APART)) {
        // From one point the whole may turn: that is no second place.
        continue;
      }
      Point other = Mirror.through(line).of(is);
      double most = Math.max(within, holds.getLast().miss(is));
      if (holds.stream().allMatch(h -> h.miss(other) <= most)) {
        others.add(other);
      }
    }
    return others;
  }

  private static Point point(double[] at, int corner) {
    return new Point(at[2 * corner], at[2 * corner + 1]);
  }

  private double[] solve(double[] said, double[] from) {
    double[] at = from.clone();
    for (int round = 0; round < ROUNDS; round++) {
      double[] pushed = new double[at.length];
      double[][] normal = normal(at, round < ROUNDS / 2 ? FIRM : LIGHT);
      for (int i = 0; i < said.length; i++) {
        double miss = said[i] - pulls.get(i).is(at);
        double[] slope = pulls.get(i).slope(at);
        for (int k = 0; k < at.length; k++) {
          pushed[k] += slope[k] * miss;
        }
      }
      double[] step = Matrix.solve(normal, pushed);
      double moved = 0;
      for (int i = 0; i < at.length; i++) {
        at[i] += step[i];
        moved = Math.max(moved, Math.abs(step[i]));
      }
      if (moved < STILL) {
        break;
      }
    }
    return at;
  }

  private double[][] normal(double[] at, double damping) {
    int n = at.length;
    double[][] normal = new double[n][n];
    for (int i = 0; i < n; i++) {
      normal[i][i] = damping;
    }
    for (Pull p : pulls) {
      double[] s = p.slope(at);
      for (int i = 0; i < n; i++) {
        for (int k = 0; s[i] != 0 && k < n; k++) {
          normal[i][k] += s[i] * s[k];
        }
      }
    }
    return normal;
  }

  /** How far each coordinate follows each pull, at those places. */
  double[][] gain(double[] at) {
    double[][] inverse = Matrix.inverse(normal(at, LIGHT));
    double[][] gain = new double[at.length][pulls.size()];
    for (int p = 0; p < pulls.size(); p++) {
      double[] column = Matrix.times(inverse, pulls.get(p).slope(at));
      for (int i = 0; i < at.length; i++) {
        gain[i][p] = column[i];
      }
    }
    return gain;
  }
}
