package org.jointwright.cases;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.util.Statistics;

/**
 * What one thing took.
 *
 * @param median milliseconds
 * @param most milliseconds, of 95 in 100
 * @param bytes memory taken from the heap each time
 */
record Timed(double median, double most, double bytes) {
  private static final String ALLOCATED = "gc.alloc.rate.norm";

  /** What is quick is timed many times, each in a process of its own. */
  static Map<String, Timed> often(String benchmark, List<String> of, int seconds) {
    return run(
        options(benchmark, of)
            .mode(Mode.SampleTime)
            .warmupIterations(2 * seconds)
            .warmupTime(TimeValue.milliseconds(500))
            .measurementIterations(2 * seconds)
            .measurementTime(TimeValue.milliseconds(500)));
  }

  /** What is slow is timed a few times. */
  static Map<String, Timed> some(String benchmark, List<String> of, int times) {
    return run(
        options(benchmark, of)
            .mode(Mode.SingleShotTime)
            .warmupIterations(1)
            .measurementIterations(times));
  }

  private static ChainedOptionsBuilder options(String benchmark, List<String> of) {
    return new OptionsBuilder()
        .include("Speed\\." + benchmark + "$")
        .param("of", of.toArray(String[]::new))
        .forks(1)
        .jvmArgs("-Xmx3g", "-XX:+UseSerialGC")
        .timeout(TimeValue.minutes(20))
        .addProfiler(GCProfiler.class);
  }

  private static Map<String, Timed> run(ChainedOptionsBuilder options) {
    Collection<RunResult> results;
    try {
      results = new Runner(options.build()).run();
    } catch (RunnerException e) {
      throw new IllegalStateException("the benchmarks could not be run", e);
    }
    Map<String, Timed> found = new TreeMap<>();
    for (RunResult r : results) {
      Statistics s = r.getPrimaryResult().getStatistics();
      var allocated = r.getSecondaryResults().get(ALLOCATED);
      found.put(
          r.getParams().getParam("of"),
          new Timed(
              s.getPercentile(50) / 1000,
              s.getPercentile(95) / 1000,
              allocated == null ? Double.NaN : allocated.getScore()));
    }
    return found;
  }

  /** How often the median of these goes into those: for all that both have. */
  static List<Double> ratios(Map<String, Timed> those, Map<String, Timed> these) {
    List<Double> found = new ArrayList<>();
    those.forEach((k, t) -> found.add(t.median() / these.get(k).median()));
    found.sort(null);
    return found;
  }
}
