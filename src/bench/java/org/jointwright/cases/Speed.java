package org.jointwright.cases;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
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
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

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

  private Plan plan = Plan.EMPTY;
  private Layout before = new Layout(Plan.EMPTY, List.of());
  private MultiLineString lines = Bare.lines(before);
  private final List<Plan> nudged = new ArrayList<>();
  private int next;

  /** The plan, a layout of it and its corners nudged, one for each. */
  @Setup
  public void lay() {
    plan = plan(of);
    before = LayoutEngine.first(plan);
    lines = Bare.lines(before);
    for (Slab s : plan.slabs()) {
      for (int i = 0; i < s.outline().vertices().size(); i++) {
        Point at = s.outline().vertices().get(i).at();
        Point by = s.outline().ring().edges().get(i).direction(0).times(NUDGE);
        nudged.add(new SlabEdit.MoveCorner(Ref.outline(s.id(), i), at.minus(by)).applyTo(plan));
      }
    }
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
    return LayoutEngine.refit(before, nudged.get(next));
  }

  /** A first layout. */
  @Benchmark
  public Layout first() {
    return LayoutEngine.first(plan);
  }

  /** The layout that stays. */
  @Benchmark
  public Layout full() {
    return LayoutEngine.lay(plan);
  }

  /** The library alone. */
  @Benchmark
  public Collection<?> bare() {
    return Bare.polygons(lines);
  }
}
