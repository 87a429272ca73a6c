package org.jointwright.wild;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * Anchored joints (M6) from distances alone: an end within 9/16 in of an edge, a box-out or another
 * joint; nothing off the slab; no joint within 1/2 in of an edge or of another for over 6 in, or
 * for nearly all of a short one; no bends but in filler.
 */
final class SecondAnchors {
  private static final double ON = 0.5625;
  private static final double BESIDE = 0.5;
  private static final double MARGIN = 0.02;
  private static final double HARDLY = 0.5;

  /** Three points a little farther off may still be taken for an arc, inches. */
  private static final double HARDLY_MARGIN = 0.1;

  private static final double RUN = 6;

  /** What the ends of a run beside something may add to it or take from it, inches. */
  private static final double RUN_MARGIN = 1.25;

  private final Slab slab;
  private final List<LineString> rim = new ArrayList<>();
  private final List<Polygon> boxOuts = new ArrayList<>();
  private final List<Predicate<Point>> inBoxOuts = new ArrayList<>();
  private final List<Path> lines = new ArrayList<>();
  private final List<LineString> joints = new ArrayList<>();
  private final ToDoubleFunction<Point> fromRim;
  private final ToDoubleFunction<Point> fromEdges;
  private final IndexedPointInAreaLocator inside;

  SecondAnchors(Plan plan, Slab slab) {
    this.slab = slab;
    Polygon whole = Planar.polygon(slab.region());
    rim.addAll(Corners.rings(whole));
    inside = new IndexedPointInAreaLocator(whole);
    for (BoxOut b : slab.boxOuts()) {
      boxOuts.add(Planar.JTS.createPolygon(Planar.ring(b.outline().ring())));
    }
    for (FixedObject f : plan.fixedIn(slab.id())) {
      if (slab.boxOuts().stream().noneMatch(b -> b.fixed().equals(f.id()))) {
        // No concrete is where it stands.
        boxOuts.add(Planar.JTS.createPolygon(Planar.ring(f.shape().ring())));
      }
    }
    for (Joint j : slab.joints()) {
      lines.add(j.kind() == JointKind.ISOLATION ? j.path() : straightened(j.path()));
      joints.add(Planar.line(lines.getLast()));
    }
    boxOuts.forEach(b -> inBoxOuts.add(Walked.inside(b)));
    fromRim = Walked.from(rim);
    List<LineString> edges = new ArrayList<>(rim);
    boxOuts.forEach(b -> edges.add(b.getExteriorRing()));
    fromEdges = Walked.from(edges);
  }

  /** The verdicts on joints by their ids. */
  Map<String, Verdict> verdicts() {
    Map<String, Verdict> verdicts = new LinkedHashMap<>();
    for (int i = 0; i < joints.size(); i++) {
      Joint j = slab.joints().get(i);
      boolean filler = j.kind() == JointKind.ISOLATION;
      Walked walked = Walked.along(lines.get(i).edges());
      Verdict verdict = outside(walked, filler).and(filler ? Verdict.KEPT : bent(j.path()));
      if (!filler) {
        double run = walked.longestWithin(fromRim, BESIDE);
        verdict = verdict.and(tooLong(run, walked, joints.get(i).getLength()));
      }
      for (int k = i + 1; k < joints.size(); k++) {
        verdict = verdict.and(onOther(i, k, walked));
      }
      verdict = verdict.and(ends(i));
      verdicts.put(j.id(), verdict);
    }
    return verdicts;
  }

  /** A path that leaves the line between its ends by no more than 1/2 in is that line. */
  private static Path straightened(Path path) {
    return path.edges().size() > 1 && bent(path) == Verdict.KEPT
        ? Path.straight(path.start(), path.end())
        : path;
  }

  private static Verdict bent(Path path) {
    if (path.edges().size() == 1) {
      return Verdict.KEPT;
    }
    LineString line = Planar.line(Path.straight(path.start(), path.end()));
    double off =
        path.edges().stream()
            .mapToDouble(e -> line.distance(Planar.JTS.createPoint(Planar.at(e.end()))))
            .max()
            .orElseThrow();
    return Verdict.over(off, off, HARDLY, HARDLY_MARGIN);
  }

  private Verdict outside(Walked walked, boolean filler) {
    double off = -1;
    for (Point p : walked.points()) {
      if (inside.locate(p.getCoordinate()) == Location.EXTERIOR) {
        off = Math.max(off, fromRim.applyAsDouble(p));
      }
      for (int b = 0; !filler && b < boxOuts.size(); b++) {
        if (inBoxOuts.get(b).test(p)) {
          off = Math.max(off, boxOuts.get(b).getExteriorRing().distance(p));
        }
      }
    }
    // The last of the walk is half a step short of the joint's end.
    return Verdict.over(off, off + walked.step(), ON, MARGIN);
  }

  private Verdict onOther(int i, int k, Walked walked) {
    LineString other = joints.get(k);
    if (!joints.get(i).isWithinDistance(other, BESIDE + MARGIN)) {
      return Verdict.KEPT;
    }
    double shorter = Math.min(joints.get(i).getLength(), other.getLength());
    double all = walked.points().size() * walked.step();
    double on = all - walked.over(Walked.from(List.of(other)), BESIDE);
    return tooLong(on, walked, shorter);
  }

  private static Verdict tooLong(double run, Walked walked, double whole) {
    double margin = RUN_MARGIN + 2 * walked.step();
    return Verdict.over(run, run, Math.min(RUN, Math.max(1, 0.9 * whole)), margin);
  }

  private Verdict ends(int i) {
    LineString own = joints.get(i);
    Verdict verdict = Verdict.KEPT;
    for (int end = 0; end < 2; end++) {
      Point p = Planar.JTS.createPoint(Walked.ends(own)[end]);
      double off = fromEdges.applyAsDouble(p);
      for (int k = 0; k < joints.size(); k++) {
        off = k == i ? off : Math.min(off, joints.get(k).distance(p));
      }
      if (slab.joints().get(i).path().isClosed()) {
        off = 0;
      }
      verdict = verdict.and(Verdict.over(off, off, ON, MARGIN));
    }
    return verdict;
  }
}
