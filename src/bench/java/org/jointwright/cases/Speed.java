package org.jointwright.cases;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jointwright.joint.Layout;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Point;
import org.locationtech.jts.geom.MultiLineString;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.runner.IterationType;

/** What is timed: laying and fitting a plan, and the library alone on the finished lines. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class Speed {
  /** How far a corner is nudged, inches. */
  private static final double NUDGE = 0.5;

  /** An open case, {@code yard-} and a number of panels, or {@code yard-} and two sides in feet. */
  @Param("")
  public String of = "";

  /** Processor times by what was timed, milliseconds: read once all was run in this process. */
  private static final Map<String, List<Double>> TAKEN = new HashMap<>();

  /** First layouts, which take longer to make than to fit. */
  private static final Map<String, Layout> FIRST = new HashMap<>();

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private boolean counts;
  private Plan plan = Plan.EMPTY;
  private Layout before = new Layout(Plan.EMPTY, List.of());
  private MultiLineString lines = Bare.lines(before);
  private final List<Plan> nudged = new ArrayList<>();
  private int next;

  /** The plan, a layout of it and its corners nudged, one for each. */
  @Setup
  public void lay() {
    plan = plan(of);
    before = first(of);
    nudged.clear();
    lines = Bare.lines(before);
    for (Slab s : plan.slabs()) {
      for (int i = 0; i < s.outline().vertices().size(); i++) {
        Point at = s.outline().vertices().get(i).at();
        Point by = s.outline().ring().edges().get(i).direction(0).times(NUDGE);
        nudged.add(new SlabEdit.MoveCorner(Ref.outline(s.id(), i), at.minus(by)).applyTo(plan));
      }
    }
  }

  /** Only what is measured counts, not what warms up. */
  @Setup(Level.Iteration)
  public void begin(IterationParams iteration) {
    counts = iteration.getType() == IterationType.MEASUREMENT;
  }

  /** Leaves out what was taken so far. */
  static void forget() {
    TAKEN.clear();
  }

  /** The first layout of a plan, made once. */
  static Layout first(String of) {
    return FIRST.computeIfAbsent(of, k -> LayoutEngine.first(plan(of)));
  }

  /** Processor times of a benchmark on a plan, milliseconds, sorted. */
  static List<Double> taken(String benchmark, String of) {
    return TAKEN.getOrDefault(benchmark + " " + of, List.of()).stream().sorted().toList();
  }

  private <T> T timed(String benchmark, Supplier<T> work) {
    long start = THREADS.getCurrentThreadCpuTime();
    T made = work.get();
    double ms = (THREADS.getCurrentThreadCpuTime() - start) / 1e6;
    if (counts) {
      TAKEN.computeIfAbsent(benchmark + " " + of, k -> new ArrayList<>()).add(ms);
    }
    return made;
  }

  static Plan plan(String of) {
    String[] parts = of.split("-");
    if (!parts[0].equals("yard")) {
      return OpenCase.all().stream()
          .filter(c -> c.name().equals(of))
          .findFirst()
          .orElseThrow()
          .plan();
    }
    return parts.length == 2
        ? Yards.of(Integer.parseInt(parts[1]))
        : Yards.of(Double.parseDouble(parts[1]), Double.parseDouble(parts[2]));
  }

  /** A corner moves by half an inch and the pattern follows, another corner each time. */
  @Benchmark
  public Optional<Layout> refit() {
    next = (next + 1) % nudged.size();
    return timed("refit", () -> LayoutEngine.refit(before, nudged.get(next)));
  }

  /** A first layout. */
  @Benchmark
  public Layout first() {
    return timed("first", () -> LayoutEngine.first(plan));
  }

  /** The layout that stays. */
  @Benchmark
  public Layout full() {
    return timed("full", () -> LayoutEngine.lay(plan));
  }

  /** The library alone. */
  @Benchmark
  public Collection<?> bare() {
    return timed("bare", () -> Bare.polygons(lines));
  }
}
