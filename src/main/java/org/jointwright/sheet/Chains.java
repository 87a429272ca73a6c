package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jointwright.joint.Numbering;
import org.jointwright.plan.LetteredCorner;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Tape;
import org.jointwright.shape.Point;

/** The running marks along each side, from the corner where its tape hooks. */
final class Chains {
  /** Marks nearer to each other than this are one; inches. */
  private static final double SAME = 1.0 / 16;

  private Chains() {}

  /**
   * A mark on a tape.
   *
   * @param along inches from the first corner
   * @param corner the letter of a corner that stands there, or empty
   */
  record Stop(double along, String corner) {}

  /** A side and its marks in order, the last one at its end. */
  record Chain(Tape tape, List<Stop> stops) {
    /** Copies the list. */
    Chain {
      stops = List.copyOf(stops);
    }

    /** The side's whole length in inches. */
    double total() {
      return stops.getLast().along();
    }
  }

  static List<Chain> of(Lettering lettering, Map<Integer, Finder.Run> runs, Numbering numbering) {
    List<Chain> chains = new ArrayList<>();
    List<Tape> tapes = new ArrayList<>(lettering.tapes());
    lettering.within().stream().filter(t -> isMarked(t, runs)).forEach(tapes::add);
    for (Tape tape : tapes) {
      List<Stop> stops = new ArrayList<>();
      for (LetteredCorner c : lettering.between(tape)) {
        stops.add(new Stop(tape.distanceTo(c.at()), c.letter()));
      }
      runs.values()
          .forEach(
              r -> {
                mark(tape, r.from(), stops);
                mark(tape, r.to(), stops);
              });
      for (Numbering.Item item : numbering.items()) {
        item.boxOut().ifPresent(b -> rim(tape, b.outline().ring().vertices(), stops));
      }
      stops.sort(Comparator.comparingDouble(Stop::along));
      chains.add(new Chain(tape, closed(tape, stops)));
    }
    return chains;
  }

  private static boolean isMarked(Tape tape, Map<Integer, Finder.Run> runs) {
    return runs.values().stream()
        .flatMap(r -> Stream.of(r.from(), r.to()))
        .anyMatch(w -> w instanceof Whereabouts.OnTape on && on.tape().equals(tape));
  }

  private static void mark(Tape tape, Whereabouts where, List<Stop> stops) {
    if (where instanceof Whereabouts.OnTape on && on.tape().equals(tape)) {
      add(new Stop(on.along(), ""), stops);
    }
  }

  private static void rim(Tape tape, List<Point> corners, List<Stop> stops) {
    for (Point p : corners) {
      if (tape.carries(p, Sides.ON)) {
        add(new Stop(tape.distanceTo(p), ""), stops);
      }
    }
  }

  /** The marks without those that are one with the mark before; inches, in their order. */
  static List<Double> apart(Collection<Double> marks) {
    List<Double> apart = new ArrayList<>();
    for (double mark : marks.stream().sorted().toList()) {
      if (apart.isEmpty() || mark - apart.getLast() >= SAME) {
        apart.add(mark);
      }
    }
    return apart;
  }

  private static void add(Stop stop, List<Stop> stops) {
    if (stops.stream().noneMatch(s -> Math.abs(s.along() - stop.along()) < SAME)) {
      stops.add(stop);
    }
  }

  private static List<Stop> closed(Tape tape, List<Stop> stops) {
    List<Stop> inside = new ArrayList<>(stops);
    inside.removeIf(s -> s.along() < SAME || s.along() > tape.length() - SAME);
    inside.add(new Stop(tape.length(), tape.to().letter()));
    return inside;
  }
}
