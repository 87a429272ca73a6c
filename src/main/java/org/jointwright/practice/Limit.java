package org.jointwright.practice;

import java.util.List;

/**
 * A figure of the trade with its sources.
 *
 * @param <T> what kind of figure: a length, a number of degrees, a share
 * @param value the figure
 * @param sources at least one, the weightiest first
 */
public record Limit<T>(T value, List<Cited> sources) {
  /** Copies the list and refuses a figure without a source. */
  public Limit {
    sources = List.copyOf(sources);
    if (sources.isEmpty()) {
      throw new IllegalArgumentException("the figure " + value + " has no source");
    }
  }

  static <T> Limit<T> of(T value, Cited... sources) {
    return new Limit<>(value, List.of(sources));
  }

  /** The weightiest source. */
  public Cited source() {
    return sources.getFirst();
  }
}
