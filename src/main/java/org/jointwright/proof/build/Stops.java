package org.jointwright.proof.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jointwright.proof.read.Figure;
import org.jointwright.proof.read.Reading;
import org.jointwright.proof.read.Reading.Side;
import org.jointwright.proof.read.Where;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** The marks on each side that tables, lists and box-outs tell. */
final class Stops {
  /** Marks may lie so far apart and be one; printed, they may differ by a step more; inches. */
  private static final double SAME = 1.0 / 16;

  private final Reading reading;
  private final Rebuilt rebuilt;

  Stops(Reading reading, Rebuilt rebuilt) {
    this.reading = reading;
    this.rebuilt = rebuilt;
  }

  private static double give(Figure f) {
    return 2 * f.half() + SAME;
  }

  /** A mark of a joint, told by one figure. */
  static Stop mark(Figure f) {
    return new Stop("", f.inches(), give(f), List.of(f));
  }

  /** The marks that joints, filler and box-outs make on a side. */
  List<Stop> made(Side side) {
    List<Stop> stops = new ArrayList<>();
    wheres()
        .filter(w -> w instanceof Where.Mark m && m.side().equals(side.name()))
        .map(w -> ((Where.Mark) w).along())
        .forEach(f -> add(new Stop(side.name(), f.inches(), give(f), List.of(f)), stops));
    rims(side, stops);
    double half = side.length().half();
    stops.removeIf(s -> s.inches() < SAME + half);
    stops.removeIf(s -> s.inches() > side.length().inches() - SAME - 2 * half);
    return stops;
  }

  /** The corners on a side and its end. */
  List<Stop> fixed(Side side) {
    return Stream.concat(side.corners().values().stream(), Stream.of(side.length()))
        .map(f -> new Stop(side.name(), f.inches(), give(f), List.of(f)))
        .toList();
  }

  private Stream<Where> wheres() {
    return Stream.of(
            reading.rows().stream().flatMap(r -> Stream.of(r.from(), r.to())),
            reading.strips().stream()
                .flatMap(
                    s ->
                        s.way() instanceof Reading.Way.Between b
                            ? Stream.of(b.from(), b.to())
                            : Stream.empty()),
            reading.boxOuts().stream().flatMap(b -> b.places().stream()))
        .flatMap(s -> s);
  }

  private void rims(Side side, List<Stop> stops) {
    Path path = rebuilt.sides().get(side.name());
    if (path == null) {
      return;
    }
    for (BoxOutShape shape : rebuilt.boxOuts().values()) {
      for (Point p : shape.corners()) {
        if (path.distance(p) < 4 * Rebuilt.ON) {
          double give = 4 * Rebuilt.ON;
          add(new Stop(side.name(), path.along(p), give, List.of()), stops);
        }
      }
    }
  }

  /** A mark that two rows tell is one mark. */
  private static void add(Stop stop, List<Stop> stops) {
    for (int i = 0; i < stops.size(); i++) {
      Stop known = stops.get(i);
      if (Math.abs(known.inches() - stop.inches()) <= Math.max(known.give(), stop.give())) {
        List<Figure> said = new ArrayList<>(known.said());
        said.addAll(stop.said());
        Stop firm = known.said().isEmpty() ? stop : known;
        stops.set(i, new Stop(firm.side(), firm.inches(), firm.give(), said));
        return;
      }
    }
    stops.add(stop);
  }

  /** Whether a corner of the side stands where the mark is: then the corner is what is printed. */
  static boolean isCorner(Stop stop, Map<String, Figure> corners) {
    return corners.values().stream().anyMatch(stop::is);
  }
}
