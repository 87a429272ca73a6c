package org.jointwright.fix.line;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** Snaps straight lines on a floor. */
public final class Chalk {
  /** A shorter line is no joint, inches. */
  public static final double SHORTEST = 6;

  /** How far a line goes. */
  public enum Reach {
    /** To the first line it meets. */
    NEXT,
    /** To the first place where it makes no tee. */
    THROUGH,
    /** To where the concrete ends. */
    EDGE
  }

  private Chalk() {}

  /** Where a line ends that leaves a place. */
  public static Optional<Stop> end(
      Floor floor, Point from, Point heading, Reach reach, Set<String> without) {
    List<Stop> stops = floor.stops(from, heading, without);
    if (stops.isEmpty()) {
      return Optional.empty();
    }
    return switch (reach) {
      case NEXT -> Optional.of(stops.getFirst());
      case THROUGH -> stops.stream().filter(Stop::good).findFirst();
      case EDGE -> stops.stream().filter(Stop::wall).findFirst();
    };
  }

  /** The line that leaves a place. */
  public static Optional<Path> from(Floor floor, Point from, Point heading, Reach reach) {
    return end(floor, from, heading, reach, Set.of())
        .filter(s -> s.at().distance(from) >= SHORTEST)
        .map(s -> Path.straight(from, s.at()));
  }

  /** The line through a place amid the concrete, both ways. */
  public static Optional<Path> through(Floor floor, Point amid, Point heading, Reach reach) {
    Optional<Stop> back = end(floor, amid, heading.times(-1), reach, Set.of());
    Optional<Stop> on = end(floor, amid, heading, reach, Set.of());
    if (back.isEmpty() || on.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(Path.straight(back.get().at(), on.get().at()))
        .filter(p -> p.length() >= SHORTEST);
  }
}
