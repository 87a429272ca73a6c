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
 * What one thing took. Processor time, so that it says little of what else the machine did.
 *
 * @param median milliseconds of the thread that did it
 * @param most the same, of 95 in 100
 * @param clock milliseconds by the clock, of 95 in 100
 * @param bytes memory taken from the heap each time
 */
record Timed(double median, double most, double clock, double bytes) {
  private static final String ALLOCATED = "gc.alloc.rate.norm";

  /** What is quick is timed many times: each plan for a second once it is warm. */
  static Map<String, Timed> often(String benchmark, List<String> of) {
    return run(
        benchmark,
        options(benchmark, of)
            .mode(Mode.SampleTime)
            .warmupIterations(1)
            .warmupTime(TimeValue.milliseconds(250))
            .measurementIterations(4)
            .measurementTime(TimeValue.milliseconds(250)));
  }

  /** Goes through all plans once, so that the first of them is not the one that finds it cold. */
  static void warm(String benchmark, List<String> of) {
    run(
        benchmark,
        options(benchmark, of)
            .mode(Mode.SampleTime)
            .warmupIterations(0)
            .measurementIterations(1)
            .measurementTime(TimeValue.milliseconds(300)));
    Speed.forget();
  }

  /** What is slow is timed a few times. */
  static Map<String, Timed> some(String benchmark, List<String> of, int before, int times) {
    return run(
        benchmark,
        options(benchmark, of)
            .mode(Mode.SingleShotTime)
            .warmupIterations(before)
            .measurementIterations(times));
  }

  private static ChainedOptionsBuilder options(String benchmark, List<String> of) {
    return new OptionsBuilder()
        .include("Speed\\." + benchmark + "$")
        .param("of", of.toArray(String[]::new))
        // One warm process for all, as a window is one: and cases need no start of their own.
        .forks(0)
        .timeout(TimeValue.minutes(20))
        .addProfiler(GCProfiler.class);
  }

  private static Map<String, Timed> run(String benchmark, ChainedOptionsBuilder options) {
    Collection<RunResult> results;
    try {
      results = new Runner(options.build()).run();
    } catch (RunnerException e) {
      throw new IllegalStateException("the benchmarks could not be run", e);
    }
    Map<String, Timed> found = new TreeMap<>();
    for (RunResult r : results) {
      Statistics clock = r.getPrimaryResult().getStatistics();
      var allocated = r.getSecondaryResults().get(ALLOCATED);
      String of = r.getParams().getParam("of");
      List<Double> taken = Speed.taken(benchmark, of);
      found.put(
          of,
          new Timed(
              taken.get(taken.size() / 2),
              taken.get((int) (0.95 * taken.size())),
              clock.getPercentile(95) / 1000,
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
