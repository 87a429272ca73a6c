package org.jointwright.wild;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/** What a run of wild slabs came to. */
final class Tally {
  private final Map<String, int[]> verdicts = new TreeMap<>();
  private long refused;
  private long gaveUp;
  private long panels;
  private long findings;

  void refused() {
    refused++;
  }

  /** The second opinion could not be had. */
  void gaveUp() {
    gaveUp++;
  }

  void judged(int panelsOfIt, int findingsOnIt) {
    panels += panelsOfIt;
    findings += findingsOnIt;
  }

  void compared(String rule, Verdict verdict) {
    verdicts.computeIfAbsent(rule, r -> new int[Verdict.values().length])[verdict.ordinal()]++;
  }

  /** Counts in what another tally counted. */
  void add(Tally other) {
    refused += other.refused;
    gaveUp += other.gaveUp;
    panels += other.panels;
    findings += other.findings;
    other.verdicts.forEach(
        (rule, counts) -> {
          int[] sum = verdicts.computeIfAbsent(rule, r -> new int[counts.length]);
          Arrays.setAll(sum, i -> sum[i] + counts[i]);
        });
  }

  long refusals() {
    return refused;
  }

  long withoutSecond() {
    return gaveUp;
  }

  long panels() {
    return panels;
  }

  long findings() {
    return findings;
  }

  /** How often a second opinion came to a verdict on a rule. */
  int count(String rule, Verdict verdict) {
    return verdicts.getOrDefault(rule, new int[Verdict.values().length])[verdict.ordinal()];
  }

  /** The rules that were compared. */
  Iterable<String> rules() {
    return verdicts.keySet();
  }
}
