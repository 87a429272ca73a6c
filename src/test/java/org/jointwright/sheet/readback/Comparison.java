package org.jointwright.sheet.readback;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jointwright.joint.Numbering;
import org.jointwright.joint.Numbering.Item;
import org.jointwright.joint.Numbering.Work;
import org.jointwright.plan.LetteredCorner;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** Compares what was rebuilt from a printed sheet with the plan that it was printed from. */
final class Comparison {
  /** How far a figure of a chain may stand from its mark on the page, millimetres. */
  private static final double FIGURE_NEAR = 30;

  private final Plan plan;
  private final Reading reading;
  private final Rebuilt rebuilt;
  private final double tolerance;
  private final List<String> differences;
  private final UnaryOperator<Point> onPlan;

  private Comparison(Plan plan, Reading reading) {
    this.plan = plan;
    this.reading = reading;
    this.tolerance = tolerance(plan);
    this.rebuilt = new Rebuilt(reading, tolerance);
    this.differences = new ArrayList<>(rebuilt.faults);
    List<Point> from = new ArrayList<>();
    List<Point> to = new ArrayList<>();
    for (LetteredCorner c : Lettering.of(plan).corners()) {
      Point p = rebuilt.corners.get(c.letter());
      if (p == null) {
        differences.add("no letter " + c.letter());
      } else {
        from.add(p);
        to.add(c.at());
      }
    }
    UnaryOperator<Point> byCorners = Fit.rigid(from, to);
    for (Item item : Numbering.of(plan).items()) {
      Path path = rebuilt.joints.get(item.number());
      if (path != null) {
        from.addAll(List.of(path.start(), path.end()));
        boolean same =
            byCorners.apply(path.start()).distance(item.path().start())
                < byCorners.apply(path.start()).distance(item.path().end());
        to.add(same ? item.path().start() : item.path().end());
        to.add(same ? item.path().end() : item.path().start());
      }
    }
    onPlan = Fit.rigid(from, to);
  }

  /** 1/8 in, or 5 mm on a metric sheet. */
  static double tolerance(Plan plan) {
    return plan.unit().isMetric() ? 5 / 25.4 : 0.125;
  }

  /** What differs by more than the tolerance; empty where the sheet says the plan. */
  static List<String> differences(Plan plan, List<Printed> lines) {
    try {
      Comparison c = new Comparison(plan, SheetReader.read(lines));
      c.corners();
      c.outlines();
      c.items();
      c.figures();
      c.listedMarks();
      c.differences.addAll(Sections.differences(plan, lines));
      return c.differences;
    } catch (AssertionError | RuntimeException e) {
      return List.of("not read: " + e);
    }
  }

  private void far(String what, double distance) {
    if (distance > tolerance) {
      differences.add(what + " is off by " + distance);
    }
  }

  private void corners() {
    for (LetteredCorner c : Lettering.of(plan).corners()) {
      far("corner " + c.letter(), onPlan.apply(rebuilt.corners.get(c.letter())).distance(c.at()));
    }
  }

  private void outlines() {
    for (Slab slab : plan.slabs()) {
      List<Edge> edges = new ArrayList<>(slab.outline().ring().edges());
      slab.openings().forEach(o -> edges.addAll(o.outline().ring().edges()));
      for (Edge e : edges) {
        for (double t : new double[] {0, 0.25, 0.5, 0.75}) {
          Point p = e.at(t);
          double nearest =
              rebuilt.sides.values().stream()
                  .mapToDouble(s -> moved(s).distance(p))
                  .min()
                  .orElse(Double.MAX_VALUE);
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
      Path path = rebuilt.joints.get(item.number());
      if (path == null) {
        differences.add("no joint " + item.number());
        continue;
      }
      Path there = moved(path);
      Point a = item.path().start();
      Point b = item.path().end();
      double same = Math.max(a.distance(there.start()), b.distance(there.end()));
      double turned = Math.max(a.distance(there.end()), b.distance(there.start()));
      far("an end of joint " + item.number(), Math.min(same, turned));
      for (Edge e : item.path().edges()) {
        far("joint " + item.number(), there.distance(e.at(0.5)));
      }
    }
  }

  private void boxOut(Item item) {
    List<Point> points = rebuilt.boxOuts.get(item.number());
    if (points == null) {
      differences.add("no box-out " + item.number());
      return;
    }
    Double radius = rebuilt.rounds.get(item.number());
    for (Point v : item.boxOut().orElseThrow().outline().ring().vertices()) {
      double off =
          radius != null
              ? Math.abs(onPlan.apply(points.getFirst()).distance(v) - radius)
              : points.stream().mapToDouble(p -> onPlan.apply(p).distance(v)).min().orElseThrow();
      far("box-out " + item.number(), off);
    }
  }

  /** Every figure on the plan is a mark of a side near which it stands. */
  private void figures() {
    List<Mark> marks = marks();
    List<Point> from = new ArrayList<>();
    List<Point> to = new ArrayList<>();
    for (Map.Entry<String, Point> e : rebuilt.corners.entrySet()) {
      from.add(turnedOver(e.getValue()));
      to.add(reading.letters().get(e.getKey()));
    }
    UnaryOperator<Point> onPage = Fit.rigid(from, to);
    for (Reading.Figure f : reading.figures()) {
      boolean found =
          marks.stream()
              .anyMatch(
                  m ->
                      Math.abs(m.along() - f.value()) < tolerance
                          && onPage.apply(turnedOver(m.at())).distance(f.at()) < FIGURE_NEAR);
      if (!found) {
        differences.add("the figure " + f.text() + " at " + f.at() + " is no mark near it");
      }
    }
  }

  /** The marks that are listed with a side stand on it. */
  private void listedMarks() {
    List<Mark> all = marks();
    for (Map.Entry<String, Reading.Side> e : reading.sides().entrySet()) {
      Path side = rebuilt.sides.get(e.getKey());
      for (double mark : e.getValue().marks()) {
        Point at = Rebuilt.along(side, mark);
        boolean found =
            all.stream()
                .anyMatch(
                    m ->
                        Math.abs(m.along() - mark) < 2 * tolerance
                            && m.at().distance(at) < 4 * tolerance);
        if (!found) {
          differences.add("the mark " + mark + " of side " + e.getKey() + " is at nothing");
        }
      }
    }
  }

  private Point turnedOver(Point p) {
    double scale = 25.4 / reading.scale();
    return new Point(p.x() * scale, -p.y() * scale);
  }

  private record Mark(double along, Point at) {}

  private List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    rebuilt.sides.forEach(
        (name, path) -> {
          Reading.Side side = reading.sides().get(name);
          marks.add(new Mark(side.length(), path.end()));
          marks.add(new Mark(side.length(), Rebuilt.along(path, path.length() / 2)));
          List<Point> stands = new ArrayList<>();
          rebuilt.corners.values().forEach(stands::add);
          rebuilt.joints.values().forEach(j -> stands.addAll(List.of(j.start(), j.end())));
          rebuilt.boxOuts.values().forEach(stands::addAll);
          for (Point p : stands) {
            if (path.distance(p) < 2 * tolerance) {
              marks.add(new Mark(alongOf(path, p), p));
            }
          }
        });
    return marks;
  }

  private static double alongOf(Path path, Point p) {
    double before = 0;
    double best = 0;
    double near = Double.MAX_VALUE;
    for (Edge e : path.edges()) {
      double t = e.nearest(p);
      if (e.at(t).distance(p) < near) {
        near = e.at(t).distance(p);
        best = before + t * e.length();
      }
      before += e.length();
    }
    return best;
  }
}
