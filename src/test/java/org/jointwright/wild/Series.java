package org.jointwright.wild;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A run of wild slabs by one of the three ways: with joints given, held by things, or laid by the
 * engine.
 */
final class Series {
  /** A slab that took long. */
  record Slow(String name, double seconds) {}

  /** A slab of which something was wrong. */
  record Failed(String name, List<String> faults) {}

  private static final int SHOWN = 8;

  /** What takes longer feels as if it hung, seconds. */
  private static final double LONG = 2;

  private final String how;
  private final Tally tally = new Tally();
  private final List<Slow> slowest = new ArrayList<>();
  private final List<Failed> failed = new ArrayList<>();
  private final Map<WildKind, int[]> kinds = new EnumMap<>(WildKind.class);
  private double seconds;
  private int longOnes;

  Series(String how) {
    this.how = how;
  }

  void add(WildSlab slab, double took, List<String> faults, Tally counted) {
    tally.add(counted);
    seconds += took;
    longOnes += took > LONG ? 1 : 0;
    int[] kind = kinds.computeIfAbsent(slab.kind(), k -> new int[2]);
    kind[0]++;
    slowest.add(new Slow(slab.name(), took));
    slowest.sort(Comparator.comparingDouble(Slow::seconds).reversed());
    if (slowest.size() > SHOWN) {
      slowest.removeLast();
    }
    if (!faults.isEmpty()) {
      kind[1]++;
      failed.add(new Failed(slab.name(), faults));
    }
  }

  String how() {
    return how;
  }

  /** How many slabs there were so far. */
  long count() {
    return kinds.values().stream().mapToLong(k -> k[0]).sum();
  }

  Tally tally() {
    return tally;
  }

  double seconds() {
    return seconds;
  }

  /** How many slabs took over 2 s. */
  int longOnes() {
    return longOnes;
  }

  List<Slow> slowest() {
    return List.copyOf(slowest);
  }

  List<Failed> failed() {
    return List.copyOf(failed);
  }

  /** Slabs of a kind, and how many of them failed. */
  Map<WildKind, int[]> kinds() {
    return kinds;
  }
}
