package org.jointwright.wild;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jointwright.check.Subject;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * Isolation (M7) from distances alone: filler within 9/16 in of each edge that something holds, but
 * for an inch in all, and of each box-out; a box-out 3 in clear of its object less 1/2 in, and no
 * farther than 3 ft and 1/2 in.
 */
final class SecondHold {
  private static final double ON = 0.5625;
  private static final double ON_MARGIN = 0.02;
  private static final double BARE = 1;
  private static final double CLEAR = 3 - 0.5;
  private static final double FAR = 36 + 0.5;
  private static final double MARGIN = 0.02;

  private final Plan plan;
  private final Slab slab;
  private final ToDoubleFunction<Point> filler;
  private final ToDoubleFunction<Point> rim;
  private final Predicate<Point> inside;
  private final List<ToDoubleFunction<Point>> boxOuts;

  SecondHold(Plan plan, Slab slab) {
    this.plan = plan;
    this.slab = slab;
    List<LineString> lines = new ArrayList<>();
    for (Joint j : slab.joints()) {
      if (j.kind() == JointKind.ISOLATION) {
        lines.add(Planar.line(j.path()));
      }
    }
    Polygon whole = Planar.polygon(slab.region());
    filler = Walked.from(lines);
    rim = Walked.from(Corners.rings(whole).stream().map(r -> (LineString) r).toList());
    inside = Walked.inside(whole);
    boxOuts = slab.boxOuts().stream().map(b -> Walked.from(ring(b))).toList();
  }

  /** The verdicts on edges that something may hold, and on objects. */
  Map<Subject, Verdict> verdicts() {
    Map<Subject, Verdict> verdicts = new LinkedHashMap<>();
    List<Edge> edges = slab.outline().ring().edges();
    for (int i = 0; i < edges.size(); i++) {
      verdicts.put(new Subject.OnEdge(OptionalInt.empty(), i), edge(edges.get(i), slab.edge(i)));
    }
    for (int n = 0; n < slab.openings().size(); n++) {
      List<Edge> own = slab.openings().get(n).outline().ring().edges();
      for (int i = 0; i < own.size(); i++) {
        EdgeSetting setting = slab.openings().get(n).edge(i);
        verdicts.put(new Subject.OnEdge(OptionalInt.of(n), i), edge(own.get(i), setting));
      }
    }
    for (FixedObject f : plan.fixedIn(slab.id())) {
      verdicts.put(new Subject.OnFixedObject(f.id()), object(f));
    }
    return verdicts;
  }

  private Verdict edge(Edge edge, EdgeSetting setting) {
    boolean held =
        switch (setting.against()) {
          case BUILDING, CONCRETE, STREET -> !setting.floats();
          case OPEN, ASPHALT -> false;
        };
    if (!held) {
      return Verdict.KEPT;
    }
    Walked all = Walked.along(List.of(edge));
    double low = bare(all.where(p -> cutOut(p) > 0.5 + MARGIN), ON + ON_MARGIN);
    double high = bare(all.where(p -> cutOut(p) > 0.5 - MARGIN), ON - ON_MARGIN);
    return Verdict.over(low, high, BARE, 0.15 + 4 * all.step());
  }

  private double bare(Walked walked, double limit) {
    return walked.over(filler, limit);
  }

  /** How far a point stands from the nearest box-out, none in it. */
  private double cutOut(Point p) {
    return boxOuts.stream()
        .mapToDouble(b -> b.applyAsDouble(p))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static Polygon ring(BoxOut b) {
    return Planar.JTS.createPolygon(Planar.ring(b.outline().ring()));
  }

  private Verdict object(FixedObject f) {
    Polygon object = Planar.JTS.createPolygon(Planar.ring(f.shape().ring()));
    List<BoxOut> own = slab.boxOuts().stream().filter(b -> b.fixed().equals(f.id())).toList();
    Walked round = Walked.along(f.shape().ring().edges());
    if (own.isEmpty()) {
      // Filler near it may enclose a piece that counts as its box-out.
      boolean alone = minFiller(round) > 40;
      double free = round.where(p -> isFree(p, 0)).points().size() * round.step();
      return alone && free > BARE + 0.5 ? Verdict.BROKEN : Verdict.UNSURE;
    }
    Verdict verdict = Verdict.KEPT;
    for (BoxOut b : own) {
      ToDoubleFunction<Point> box = Walked.from(ring(b));
      double out = round.where(inside).over(box, 0.5 + MARGIN);
      double nearlyOut = round.where(inside).over(box, 0.5 - MARGIN);
      // The walk of the rule sees no shorter stretch than a quarter inch.
      verdict = verdict.and(Verdict.over(out, nearlyOut, 0.2, 0.2));
      verdict = verdict.and(boxOut(Walked.from(object), b));
    }
    return verdict;
  }

  private double minFiller(Walked round) {
    return round.points().stream().mapToDouble(filler).min().orElseThrow();
  }

  private Verdict boxOut(ToDoubleFunction<Point> object, BoxOut b) {
    Walked edge = Walked.along(b.outline().ring().edges());
    Walked free = edge.where(p -> isFree(p, ON_MARGIN));
    Walked nearlyFree = edge.where(p -> isFree(p, -ON_MARGIN));
    double slack = 0.3 + 8 * edge.step();
    Verdict verdict =
        Verdict.over(bare(free, ON + ON_MARGIN), bare(nearlyFree, ON - ON_MARGIN), BARE, slack);
    double near = nearest(object, free);
    double nearer = nearest(object, nearlyFree);
    verdict = verdict.and(Verdict.over(-near, -nearer, -CLEAR, 0.1));
    double far = farthest(object, edge.where(inside));
    return verdict.and(Verdict.over(far, far, FAR, 0.1));
  }

  private static double nearest(ToDoubleFunction<Point> object, Walked free) {
    return free.points().stream().mapToDouble(object).min().orElse(1e9);
  }

  private static double farthest(ToDoubleFunction<Point> object, Walked edge) {
    return edge.points().stream().mapToDouble(object).max().orElse(0);
  }

  private boolean isFree(Point p, double margin) {
    return inside.test(p) && rim.applyAsDouble(p) > ON + margin;
  }
}
