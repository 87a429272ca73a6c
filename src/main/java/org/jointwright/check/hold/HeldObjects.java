package org.jointwright.check.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.along.Nearness;
import org.jointwright.check.along.Stretches;
import org.jointwright.check.along.Stretches.Stretch;
import org.jointwright.check.evidence.Judged;
import org.jointwright.joint.Cutout;
import org.jointwright.joint.Cutouts;
import org.jointwright.measure.Length;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.JointKind;
import org.jointwright.practice.BoxOuts;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Isolation;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;

/** The part of M7 that looks round fixed objects. */
final class HeldObjects {
  private static final double CLEAR = BoxOuts.CLEAR.value().inches();
  private static final double REACH = BoxOuts.REACH.value().inches();
  private static final double TOLERANCE = Tolerance.LENGTH_INCHES;

  /** What rounding may take from a clearance, inches. */
  private static final double SLACK = 1e-3;

  private final Check check;
  private final Judged slab;
  private final List<Edge> edges;
  private final List<Edge> filler;
  private final List<Finding> findings = new ArrayList<>();

  HeldObjects(Check check, Judged slab) {
    this.check = check;
    this.slab = slab;
    edges = slab.concrete().edges();
    filler = slab.edgesOf(JointKind.ISOLATION);
  }

  List<Finding> findings() {
    for (FixedObject f : slab.plan().fixedIn(slab.slab().id())) {
      if (Cutouts.standsIn(slab.slab(), f)) {
        judge(f);
      }
    }
    return findings;
  }

  private void judge(FixedObject f) {
    List<Cutout> own =
        slab.concrete().cutouts().stream().filter(c -> c.fixed().equals(f.id())).toList();
    Ring object = f.shape().ring();
    boolean bareObject = own.stream().anyMatch(c -> !c.listed() && c.ring().equals(object));
    if (bareObject) {
      noBoxOut(f, object);
      return;
    }
    uncovered(f, object, own);
    for (Cutout c : own) {
      far(f, object, c);
      List<Stretch> free = Stretches.of(path(c.ring()), this::isFree);
      bare(f, free);
      tooClose(f, object, free);
    }
  }

  private static Path path(Ring ring) {
    return new Path(ring.edges());
  }

  /** Whether a point of a box-out's edge is amid the slab and not on the slab's own edge. */
  private boolean isFree(Point p) {
    return slab.concrete().region().contains(p) && !Nearness.isOn(edges, p, Nearness.ON);
  }

  private void noBoxOut(FixedObject f, Ring object) {
    List<Stretch> free = Stretches.of(path(object), this::isFree);
    if (Stretches.length(free) > 2 * TOLERANCE) {
      add(
          f,
          free.getFirst().middle(),
          0,
          CLEAR,
          "check.m7.noBoxOut",
          List.of(f.id(), Length.inches(CLEAR)));
    }
  }

  private void uncovered(FixedObject f, Ring object, List<Cutout> own) {
    Region region = slab.concrete().region();
    Predicate<Point> outside =
        p ->
            region.contains(p)
                && own.stream()
                    .map(Cutout::ring)
                    .noneMatch(
                        r -> r.contains(p) || Nearness.isOn(r.edges(), p, TOLERANCE + SLACK));
    List<Stretch> out = Stretches.of(path(object), outside);
    if (!out.isEmpty()) {
      double length = Stretches.length(out);
      add(f, out.getFirst().middle(), length, 0, "check.m7.uncovered", List.of(f.id()));
    }
  }

  private void far(FixedObject f, Ring object, Cutout c) {
    double farthest = 0;
    Point at = c.ring().edges().getFirst().start();
    // An edge of the box-out may leave the slab and come back: each stretch on it has its own ends.
    for (Stretch s : Stretches.of(path(c.ring()), slab.concrete()::reaches)) {
      for (Point p : List.of(s.edge().at(s.from()), s.middle(), s.edge().at(s.to()))) {
        double d = object.contains(p) ? 0 : object.distance(p);
        if (d > farthest) {
          farthest = d;
          at = p;
        }
      }
    }
    if (farthest > REACH + TOLERANCE) {
      add(
          f,
          at,
          farthest,
          REACH,
          "check.m7.tooFar",
          List.of(f.id(), Length.inches(farthest), Length.inches(REACH)));
    }
  }

  private void bare(FixedObject f, List<Stretch> free) {
    List<Stretch> bare = new ArrayList<>();
    for (Stretch s : free) {
      if (s.length() > 0) {
        bare.addAll(
            Stretches.of(
                s.edge().part(s.from(), s.to()), p -> !Nearness.isOn(filler, p, Nearness.ON)));
      }
    }
    double length = Stretches.length(bare);
    if (length > 2 * TOLERANCE) {
      add(
          f,
          bare.getFirst().middle(),
          length,
          0,
          "check.m7.bareBoxOut",
          List.of(f.id(), Length.inches(length)));
    }
  }

  private void tooClose(FixedObject f, Ring object, List<Stretch> free) {
    double nearest = Double.POSITIVE_INFINITY;
    Point at = object.edges().getFirst().start();
    for (Stretch s : free) {
      int n = (int) Math.ceil(s.length() * 8) + 1;
      for (int i = 0; i <= n; i++) {
        Point p = s.edge().at(s.from() + (s.to() - s.from()) * i / n);
        double d = object.contains(p) ? 0 : object.distance(p);
        if (d < nearest) {
          nearest = d;
          at = p;
        }
      }
    }
    if (nearest < CLEAR - TOLERANCE - SLACK) {
      add(
          f,
          at,
          nearest,
          CLEAR,
          "check.m7.tooClose",
          List.of(f.id(), Length.inches(nearest), Length.inches(CLEAR)));
    }
  }

  private void add(
      FixedObject f, Point at, double measured, double limit, String key, List<Object> arguments) {
    Cited source = key.equals("check.m7.bareBoxOut") ? Isolation.WHERE : BoxOuts.CLEAR.source();
    findings.add(
        new Finding(
            check.rule(),
            Severity.MUST,
            slab.slab().id(),
            new Subject.OnFixedObject(f.id()),
            at,
            measured,
            limit,
            key,
            arguments,
            List.of(source)));
  }
}
