package org.jointwright.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.jointwright.joint.FillerWidth;
import org.jointwright.joint.Numbering;
import org.jointwright.joint.Numbering.Item;
import org.jointwright.joint.Numbering.Work;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.How;
import org.jointwright.plan.Joint;
import org.jointwright.plan.LetteredCorner;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.practice.JointDepth;
import org.jointwright.proof.build.BoxOutShape;
import org.jointwright.proof.build.Rebuilt;
import org.jointwright.proof.read.Reading;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** Compares what was rebuilt from a printed sheet with the plan that it was printed from. */
final class Comparison {
  /**
   * How much farther the end of a joint may be off than a corner: it hangs on corners that are half
   * a step off either way, and on a mark that is half a step off along their side.
   */
  private static final double ENDS = (1 + Math.sqrt(2)) / 2;

  private final Plan plan;
  private final Reading reading;
  private final Rebuilt rebuilt;
  private final double tolerance;
  private final UnaryOperator<Point> onPlan;
  private final List<String> differences = new ArrayList<>();

  private Comparison(Plan plan, Proof proof) {
    this.plan = plan;
    this.reading = proof.reading();
    this.rebuilt = proof.closing().rebuilt();
    this.tolerance = reading.units() == UnitSystem.METRIC ? 5 / 25.4 : 0.125;
    List<Point> from = new ArrayList<>();
    List<Point> to = new ArrayList<>();
    for (LetteredCorner c : Lettering.of(plan).corners()) {
      from.add(Objects.requireNonNull(rebuilt.corners().get(c.letter()), c.letter()));
      to.add(c.at());
    }
    UnaryOperator<Point> byCorners = Fit.rigid(from, to);
    for (Item item : Numbering.of(plan).items()) {
      Path path = rebuilt.joints().get(item.number());
      if (path != null) {
        Point start = byCorners.apply(path.start());
        boolean same = start.distance(item.path().start()) < start.distance(item.path().end());
        from.addAll(List.of(path.start(), path.end()));
        to.add(same ? item.path().start() : item.path().end());
        to.add(same ? item.path().end() : item.path().start());
      }
    }
    this.onPlan = Fit.rigid(from, to);
  }

  /** What differs by more than the tolerance; empty where the sheet says the plan. */
  static List<String> differences(Plan plan, Proof proof) {
    Comparison c = new Comparison(plan, proof);
    c.corners();
    c.outlines();
    c.items();
    c.sections();
    c.cuts();
    return c.differences;
  }

  private void far(String what, double distance) {
    far(what, distance, tolerance);
  }

  private void far(String what, double distance, double allowed) {
    if (distance > allowed) {
      differences.add(what + " is off by " + distance);
    }
  }

  private void corners() {
    for (LetteredCorner c : Lettering.of(plan).corners()) {
      Point there = Objects.requireNonNull(rebuilt.corners().get(c.letter()));
      far("corner " + c.letter(), onPlan.apply(there).distance(c.at()));
    }
  }

  private void outlines() {
    List<Path> sides = rebuilt.sides().values().stream().map(this::moved).toList();
    for (Slab slab : plan.slabs()) {
      List<Edge> edges = new ArrayList<>(slab.outline().ring().edges());
      slab.openings().forEach(o -> edges.addAll(o.outline().ring().edges()));
      for (Edge e : edges) {
        for (double t : new double[] {0, 0.25, 0.5, 0.75}) {
          Point p = e.at(t);
          double nearest =
              sides.stream().mapToDouble(s -> s.distance(p)).min().orElse(Double.MAX_VALUE);
          far("edge of " + slab.id() + " at " + p, nearest);
        }
      }
    }
  }

  private Path moved(Path path) {
    return new Path(path.edges().stream().map(e -> Fit.moved(e, onPlan)).toList());
  }

  private void items() {
    for (Item item : Numbering.of(plan).items()) {
      if (item.work() == Work.BOX_OUT) {
        boxOut(item);
        continue;
      }
      Path path = rebuilt.joints().get(item.number());
      if (path == null) {
        differences.add("no joint " + item.number());
        continue;
      }
      Path there = moved(path);
      Point a = item.path().start();
      Point b = item.path().end();
      double same = Math.max(a.distance(there.start()), b.distance(there.end()));
      double turned = Math.max(a.distance(there.end()), b.distance(there.start()));
      far("an end of joint " + item.number(), Math.min(same, turned), ENDS * tolerance);
      item.path().edges().forEach(e -> far("joint " + item.number(), there.distance(e.at(0.5))));
    }
  }

  private void boxOut(Item item) {
    BoxOutShape shape = rebuilt.boxOuts().get(item.number());
    if (shape == null) {
      differences.add("no box-out " + item.number());
      return;
    }
    for (Point v : item.boxOut().orElseThrow().outline().ring().vertices()) {
      double off =
          shape.radius().isPresent()
              ? Math.abs(onPlan.apply(shape.middle()).distance(v) - shape.radius().getAsDouble())
              : shape.corners().stream()
                  .mapToDouble(p -> onPlan.apply(p).distance(v))
                  .min()
                  .orElse(Double.MAX_VALUE);
      far("box-out " + item.number(), off);
    }
  }

  /** Filler as wide and deep as it is; what is dug for each slab. */
  private void sections() {
    for (Reading.Strip strip : reading.strips()) {
      Item item = Numbering.of(plan).items().get(strip.number() - 1);
      Slab slab = plan.slab(item.slab()).orElseThrow();
      same("filler " + strip.number() + " deep", strip.depth().inches(), slab.thickness());
      item.joints().stream()
          .findFirst()
          .map(j -> Length.inches(FillerWidth.of(j, slab)))
          .ifPresent(w -> same("filler " + strip.number() + " wide", strip.width().inches(), w));
    }
    for (Slab slab : plan.slabs()) {
      double dig = of(slab, reading.orders().dig());
      // It adds up with the base as that is printed.
      double base = reading.units().rounding().round(slab.base()).inches();
      same("dig at " + slab.id(), dig - base, slab.thickness());
      same("base at " + slab.id(), of(slab, reading.orders().base()), slab.base());
    }
  }

  private void same(String what, double printed, Length is) {
    double step = reading.units().rounding().step().inches();
    if (Math.abs(printed - is.inches()) > step / 2 + 1e-6) {
      differences.add(what + " is printed " + printed + ", is " + is);
    }
  }

  private static double of(Slab slab, List<Reading.Depth> depths) {
    return depths.stream()
        .filter(d -> d.slabs().isEmpty() || d.slabs().contains(slab.id()))
        .mapToDouble(d -> d.depth().inches())
        .findFirst()
        .orElse(Double.NaN);
  }

  /** The depths that joints are cut are those that are told. */
  private void cuts() {
    double finest = reading.units() == UnitSystem.METRIC ? 1 / 25.4 : 1.0 / 16;
    TreeSet<Long> asked = new TreeSet<>();
    for (Item item : Numbering.of(plan).items()) {
      if (item.work() == Work.CUT) {
        Joint joint = item.joints().getFirst();
        Slab slab = plan.slab(item.slab()).orElseThrow();
        Length least = JointDepth.least(slab.thickness(), joint.how().orElse(How.SAWN));
        double depth = joint.depth().orElse(least).inches();
        asked.add((long) Math.ceil(depth / finest - 1e-6));
      }
    }
    TreeSet<Long> told = new TreeSet<>();
    reading.orders().cuts().forEach(c -> told.add(Math.round(c.depth().inches() / finest)));
    if (!asked.equals(told)) {
      differences.add("cut " + told + " deep, not " + asked);
    }
  }
}
