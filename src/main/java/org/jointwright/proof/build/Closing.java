package org.jointwright.proof.build;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.proof.read.Figure;
import org.jointwright.proof.read.Reading;

/**
 * How near everything on a sheet closes, and how near it must.
 *
 * <p>The sheet is rebuilt once with its figures as printed, and once for each figure with that one
 * longer by half the step it was rounded to. How much a difference moves then, summed over all
 * figures, is the most that rounding can make of it: what is over that cannot be right. (To first
 * order; the second is far below a hundredth of an inch for any step that is printed.)
 */
public final class Closing {
  /** What the first order leaves out, and the noise of arithmetic; inches. */
  private static final double NOISE = 0.01;

  private static final int ATTEMPTS = 40;

  /** So often corners are taken over a line, one after the other, while that closes more. */
  private static final int ROUNDS = 8;

  /** A corner is looked for over a line where its pulls differ by no more than this; inches. */
  private static final double MIRRORED = 1;

  /** Another beginning is better only where much less is left open. */
  private static final double MUCH_LESS = 0.5;

  /** A figure that accounts for less of what does not close is not named. */
  private static final double EXPLAINED = 0.8;

  /** A second figure that accounts for so much of what the first does leaves doubt. */
  private static final double DOUBT = 0.97;

  private final Reading reading;
  private final Rebuilt rebuilt;
  private final double[] allowed;
  private final double[][] moves;
  private final Map<String, Double> doubts;

  private Closing(
      Reading reading,
      Rebuilt rebuilt,
      double[] allowed,
      double[][] moves,
      Map<String, Double> doubts) {
    this.reading = reading;
    this.rebuilt = rebuilt;
    this.allowed = allowed;
    this.moves = moves;
    this.doubts = doubts;
  }

  /**
   * Rebuilds what a sheet says. Where that does not close, corners may have been taken for the
   * other side of a string: then it is begun from other places, so many times, by turns all of it
   * and only what hangs on the worst. What closes best is kept; of what closes as well, that which
   * lies nearest to the letters, for a slab that hangs on one side of another closes as well on its
   * wrong side.
   */
  public static Closing of(Reading reading) {
    Net net = new Net(reading);
    Values values = Values.of(reading.figures());
    double[] places = net.solve(values, 0);
    Closing best = at(reading, net, values, places);
    if (best.excess() == 0) {
      return nearest(best, net, values, places);
    }
    for (int round = 0; round < ROUNDS && best.excess() > 0; round++) {
      double before = best.excess();
      for (Net.Turned turned : net.mirrored(values, places, MIRRORED)) {
        double[] other = turned.at();
        if (excess(off(new Rebuilt(reading, values, net, other)), best.allowed)
            < MUCH_LESS * best.excess()) {
          places = other;
          best = at(reading, net, values, other);
        }
      }
      if (best.excess() == before) {
        break;
      }
    }
    for (int attempt = 1; attempt <= ATTEMPTS; attempt++) {
      boolean isAnew = attempt % 2 == 0 || best.excess() == 0;
      double[] other =
          isAnew ? net.solve(values, attempt) : net.solveAgain(values, places, attempt);
      Rebuilt rebuilt = new Rebuilt(reading, values, net, other);
      double left = excess(off(rebuilt), best.allowed);
      boolean closes = left == 0 && best.excess() == 0;
      if (closes ? net.stray(other) < net.stray(places) : left < MUCH_LESS * best.excess()) {
        places = other;
        best = at(reading, net, values, other);
      }
    }
    return best;
  }

  /**
   * Of what closes as well with one corner on the other side of a line, that which lies nearer to
   * the letters.
   */
  private static Closing nearest(Closing closing, Net net, Values values, double[] places) {
    Closing best = closing;
    double[] found = places;
    List<Net.Turned> closes =
        net.mirrored(values, places, MIRRORED).stream()
            .filter(
                t ->
                    excess(off(new Rebuilt(closing.reading, values, net, t.at())), closing.allowed)
                        == 0)
            .toList();
    for (Net.Turned other : closes) {
      if (net.stray(other.at()) < net.stray(found) - 1) {
        found = other.at();
        best = at(closing.reading, net, values, found);
      }
    }
    for (Net.Turned other : closes) {
      double off = other.off(places);
      if (net.isBlurred(off)) {
        best.doubts.merge(net.names().get(other.corner()), off, Math::max);
      }
    }
    return best;
  }

  /** How much more does not close than rounding allows, in times of what it allows. */
  private double excess() {
    return excess(off(rebuilt), allowed);
  }

  private static double excess(double[] off, double[] allowed) {
    double sum = 0;
    for (int k = 0; k < off.length && off.length == allowed.length; k++) {
      double over = Math.max(0, Math.abs(off[k]) - allowed[k]) / allowed[k];
      sum += over * over;
    }
    return off.length == allowed.length ? sum : Double.MAX_VALUE;
  }

  private static Closing at(Reading reading, Net net, Values values, double[] at) {
    double[][] gain = net.gain(at);
    double[] said = net.said(values);
    Rebuilt rebuilt = new Rebuilt(reading, values, net, at);
    double[] base = off(rebuilt);
    double[] allowed = new double[base.length];
    double[][] moves = new double[reading.figures().size()][];
    double[] doubt = new double[at.length];
    for (Figure f : reading.figures()) {
      moves[f.index()] = new double[base.length];
      if (!values.isAsked(f)) {
        // What is built of the others only, such as depths and repeated marks, stays as it is.
        continue;
      }
      double by = f.half() > 0 ? f.half() : NOISE;
      Values moved = values.moved(f, by);
      double[] shift = net.said(moved);
      for (int i = 0; i < shift.length; i++) {
        shift[i] -= said[i];
      }
      double[] corners = Matrix.times(gain, shift);
      for (int i = 0; f.half() > 0 && i < at.length; i++) {
        // Anything within half a step is as likely: a third of its square.
        doubt[i] += corners[i] * corners[i] / 3;
      }
      double[] move = minus(off(new Rebuilt(reading, moved, net, plus(at, corners))), base);
      moves[f.index()] = move;
      for (int k = 0; f.half() > 0 && k < move.length; k++) {
        allowed[k] += Math.abs(move[k]);
      }
    }
    for (int i = 0; i < said.length; i++) {
      double slack = net.pulls().get(i).slack();
      if (slack > 0) {
        double[] shift = new double[said.length];
        shift[i] = slack;
        double[] shifted = plus(at, Matrix.times(gain, shift));
        double[] move = minus(off(new Rebuilt(reading, values, net, shifted)), base);
        for (int k = 0; k < move.length; k++) {
          allowed[k] += Math.abs(move[k]);
        }
      }
    }
    for (int k = 0; k < allowed.length; k++) {
      allowed[k] += rebuilt.misses().get(k).slack() + NOISE;
    }
    Map<String, Double> doubts = new LinkedHashMap<>();
    for (int i = 0; i < net.names().size(); i++) {
      doubts.put(net.names().get(i), 2 * Math.sqrt(doubt[2 * i] + doubt[2 * i + 1]));
    }
    return new Closing(reading, rebuilt, allowed, moves, doubts);
  }

  private static double[] off(Rebuilt rebuilt) {
    return rebuilt.misses().stream().mapToDouble(Miss::off).toArray();
  }

  private static double[] plus(double[] a, double[] b) {
    double[] sum = a.clone();
    for (int i = 0; i < b.length; i++) {
      sum[i] += b[i];
    }
    return sum;
  }

  /** What is found with a figure moved may lack what could not be rebuilt; that moves nothing. */
  private static double[] minus(double[] a, double[] b) {
    double[] difference = new double[b.length];
    for (int i = 0; i < b.length && a.length == b.length; i++) {
      difference[i] = a[i] - b[i];
    }
    return difference;
  }

  /**
   * How far the rounding of all figures may well put a corner off its place: twice the usual
   * deviation (the usual theory of adjustment, from memory), or as far as a second place where all
   * closes as well; inches, by letter.
   */
  public Map<String, Double> doubts() {
    return Collections.unmodifiableMap(doubts);
  }

  /** What was rebuilt. */
  public Rebuilt rebuilt() {
    return rebuilt;
  }

  /**
   * A difference beside the most that rounding makes of it.
   *
   * @param allowed inches
   */
  public record Judged(Miss miss, double allowed) {
    /** Whether rounding accounts for it. */
    public boolean holds() {
      return Math.abs(miss.off()) <= allowed;
    }
  }

  /** Every difference. */
  public List<Judged> judged() {
    List<Judged> all = new ArrayList<>();
    for (int k = 0; k < allowed.length; k++) {
      all.add(new Judged(rebuilt.misses().get(k), allowed[k]));
    }
    return all;
  }

  /**
   * The one figure that, put right, would make all close, and what it would be.
   *
   * @param figure the figure
   * @param inches what it should be, inches
   */
  public record Suspect(Figure figure, double inches) {}

  /**
   * Looks for the figure that accounts for what does not close.
   *
   * @return empty where no figure does alone, or several do as well
   */
  public Optional<Suspect> suspect() {
    double[] off = new double[allowed.length];
    double whole = 0;
    for (int k = 0; k < off.length; k++) {
      off[k] = rebuilt.misses().get(k).off() / allowed[k];
      whole += off[k] * off[k];
    }
    Suspect best = null;
    double share = 0;
    double second = 0;
    for (Figure f : reading.figures()) {
      double[] move = moves[f.index()];
      double by = f.half() > 0 ? f.half() : NOISE;
      double along = 0;
      double size = 0;
      for (int k = 0; k < off.length; k++) {
        along += off[k] * move[k] / allowed[k];
        size += move[k] * move[k] / (allowed[k] * allowed[k]);
      }
      double explains = size > 0 ? along * along / size / whole : 0;
      if (explains > share) {
        second = share;
        share = explains;
        best = new Suspect(f, f.inches() - along / size * by);
      } else {
        second = Math.max(second, explains);
      }
    }
    return share > EXPLAINED && second < DOUBT * share && best != null && best.inches() > 0
        ? Optional.ofNullable(best)
        : Optional.empty();
  }
}
