package org.jointwright.wild;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import org.jointwright.file.PlanWriter;
import org.jointwright.plan.Plan;

/**
 * Puts wild slabs through the program: {@code mvn -q -Prandom -Drandom="100000 5000 300"} reads,
 * cuts and judges 100,000 with joints drawn at random, 5,000 with what holds slabs too, and has the
 * engine lay the first 300 of them without, the huge ones left out; then it makes the page of
 * random slabs anew. {@code "LENS-31 NECK-2"} puts these two through and leaves the page alone.
 * Plans that fail are kept in {@code target/wild}.
 */
final class RandomRun {
  static final Path PAGE = Path.of("src/docs/RANDOM.md");
  private static final Path FAILED = Path.of("target", "wild");
  private static final long USUAL = 100_000;
  private static final long OFTEN = 1000;

  /** So many slabs for each processor wait to be told, so that a long one holds up no other. */
  private static final int AHEAD = 50;

  /** Other programs must not count: slabs are timed by the processor’s time. */
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private RandomRun() {}

  public static void main(String[] args) throws IOException {
    try (PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8)) {
      if (args.length > 0 && args[0].contains("-")) {
        for (String name : args) {
          WildSlab slab = WildSlab.named(name);
          keep(slab, "given", slab.jointed());
          out.println(name + " given: " + faults(slab, "given", slab::jointed, new Tally()));
          keep(slab, "held", slab.held());
          out.println(name + " held: " + faults(slab, "held", slab::held, new Tally()));
          out.println(name + " laid: " + faults(slab, "laid", slab::bare, new Tally()));
        }
        return;
      }
      long given = args.length > 0 ? Long.parseLong(args[0]) : USUAL;
      long held = args.length > 1 ? Long.parseLong(args[1]) : given / 20;
      long laid = args.length > 2 ? Long.parseLong(args[2]) : given / 300;
      List<Series> series = new ArrayList<>();
      run(new Series("given"), given, WildSlab::jointed, out, series);
      run(new Series("held"), held, WildSlab::held, out, series);
      run(new Series("laid"), laid, WildSlab::bare, out, series);
      out.println(PAGE);
    }
  }

  /** What came of one slab. */
  private record Came(WildSlab slab, double seconds, List<String> faults, Tally tally) {}

  /**
   * A run of the first slabs, as many at a time as there are processors and told in their order;
   * the page is written now and then, so that one may look or leave.
   */
  private static void run(
      Series series, long count, Function<WildSlab, Plan> plan, PrintStream out, List<Series> all)
      throws IOException {
    all.add(series);
    int workers = Runtime.getRuntime().availableProcessors();
    try (ExecutorService pool = Executors.newFixedThreadPool(workers)) {
      Deque<CompletableFuture<Came>> ahead = new ArrayDeque<>();
      for (long n = 0; n < count; n++) {
        WildSlab slab = WildSlab.numbered(n);
        if (series.how().equals("laid") && slab.kind() == WildKind.HUGE) {
          // Thousands of panels are a matter of how fast the engine is, and measured elsewhere.
          continue;
        }
        ahead.add(CompletableFuture.supplyAsync(() -> came(slab, series.how(), plan), pool));
        if (ahead.size() > AHEAD * workers) {
          tell(ahead.remove(), series, plan, out);
        }
        if (n % OFTEN == 0) {
          Files.writeString(PAGE, RandomPage.of(all));
        }
      }
      while (!ahead.isEmpty()) {
        tell(ahead.remove(), series, plan, out);
      }
    }
    Files.writeString(PAGE, RandomPage.of(all));
  }

  private static Came came(WildSlab slab, String how, Function<WildSlab, Plan> plan) {
    Tally tally = new Tally();
    long start = THREADS.getCurrentThreadCpuTime();
    List<String> faults = faults(slab, how, () -> plan.apply(slab), tally);
    return new Came(slab, (THREADS.getCurrentThreadCpuTime() - start) / 1e9, faults, tally);
  }

  private static void tell(
      CompletableFuture<Came> future, Series series, Function<WildSlab, Plan> plan, PrintStream out)
      throws IOException {
    Came came = future.join();
    series.add(came.slab(), came.seconds(), came.faults(), came.tally());
    if (!came.faults().isEmpty()) {
      String how = series.how();
      out.println(came.slab().name() + " " + how + ": " + String.join("; ", came.faults()));
      keep(came.slab(), how, plan.apply(came.slab()));
    }
  }

  private static List<String> faults(
      WildSlab slab, String how, java.util.function.Supplier<Plan> plan, Tally tally) {
    try {
      Probe probe = new Probe(tally);
      return switch (how) {
        case "laid" -> probe.laid(plan.get());
        case "held" -> probe.held(plan.get());
        default -> probe.given(plan.get());
      };
    } catch (RuntimeException e) {
      StringWriter trace = new StringWriter();
      e.printStackTrace(new PrintWriter(trace));
      return List.of("threw " + trace.toString().lines().limit(6).toList());
    }
  }

  private static void keep(WildSlab slab, String how, Plan plan) throws IOException {
    Files.createDirectories(FAILED);
    Files.write(
        FAILED.resolve(slab.name() + "-" + how + ".jointwright.json"), PlanWriter.bytes(plan));
  }
}
