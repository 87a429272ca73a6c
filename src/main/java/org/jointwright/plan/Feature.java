package org.jointwright.plan;

import java.util.Optional;

/**
 * Something that people see along an edge, such as a garage door. Joints like to meet its two ends.
 *
 * @param kind what it is
 * @param from where it starts, inches along the edge from the edge's first corner, 0 or more
 * @param to where it ends, inches, at least {@link #SHORTEST} beyond {@code from}
 * @param kept what the file said besides
 */
public record Feature(FeatureKind kind, double from, double to, Kept kept) {
  /** The shortest feature, inches: anything less is a slip of the figures (no source). */
  public static final double SHORTEST = 1;

  /** What a difference of two figures may lose, inches. */
  private static final double NOISE = 1e-6;

  /** Refuses a feature that starts before the edge or does not run forward. */
  public Feature {
    if (!(from >= 0 && to - from >= SHORTEST - NOISE)) {
      throw new IllegalArgumentException("no feature runs from " + from + " to " + to);
    }
  }

  /** A feature of which nothing more is known. */
  public static Feature of(FeatureKind kind, double from, double to) {
    return new Feature(kind, from, to, Kept.NOTHING);
  }

  /** As much of it as lies between two distances along its edge; empty where too little is left. */
  public Optional<Feature> cut(double least, double most) {
    double start = Math.max(from, least);
    double end = Math.min(to, most);
    return end - start < SHORTEST
        ? Optional.empty()
        : Optional.of(new Feature(kind, start, end, kept));
  }

  /** The same feature, measured from a point {@code by} inches farther back along its line. */
  public Feature shifted(double by) {
    return by == 0 ? this : new Feature(kind, from + by, to + by, kept);
  }

  /** The same feature on an edge of {@code length} inches that is run the other way. */
  public Feature turned(double length) {
    return new Feature(kind, Math.max(0, length - to), length - from, kept);
  }
}
