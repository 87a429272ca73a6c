package org.jointwright.check.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.face.Face;
import org.jointwright.check.face.Jogs;
import org.jointwright.check.face.Knot;
import org.jointwright.check.face.Loop;
import org.jointwright.check.face.Rim;
import org.jointwright.check.face.TightTurns;
import org.jointwright.check.face.TightTurns.Tight;
import org.jointwright.measure.Length;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Point;

/**
 * M3, inside corners: a crack starts at each that no joint leaves from, and at a tight curve that
 * bends into the panel for long.
 */
public final class InsideCorners implements Check {
  private static final double INSIDE = Angles.INSIDE.value() + Tolerance.ANGLE.value();
  private static final double CONCAVE = Angles.CONCAVE_TURN.value() + Tolerance.ANGLE.value();

  @Override
  public String rule() {
    return "M3";
  }

  @Override
  public Severity severity() {
    return Severity.MUST;
  }

  @Override
  public List<Cited> sources() {
    return Angles.INSIDE.sources();
  }

  @Override
  public List<Finding> findings(Judged slab) {
    Set<Point> served = Rim.of(slab.faces()).servedTogether();
    List<Finding> findings = new ArrayList<>();
    for (Face f : slab.faces()) {
      for (Loop loop : f.loops()) {
        for (Knot k : loop.knots()) {
          if (k.interior() > INSIDE && !isExcused(loop, k, served)) {
            findings.add(corner(slab, f, loop, k));
          }
        }
        for (Tight t : TightTurns.of(loop)) {
          if (t.degrees() > CONCAVE) {
            findings.add(curve(slab, f, t));
          }
        }
      }
    }
    return findings;
  }

  private static boolean isExcused(Loop loop, Knot knot, Set<Point> served) {
    boolean partOfACurve = knot.count() == 1 && TightTurns.isSoft(loop, knot.first());
    return partOfACurve
        || Jogs.isJog(loop, knot)
        || IntStream.range(0, knot.count())
            .mapToObj(i -> loop.step(knot.first() + i).edge().start())
            .anyMatch(served::contains);
  }

  private Finding corner(Judged slab, Face f, Loop loop, Knot k) {
    boolean onEdge = loop.step(k.first()).hard() || loop.step(k.first() - 1).hard();
    return finding(
        slab,
        new Subject.OnPanel(f.id()),
        k.at(),
        k.interior(),
        Angles.INSIDE.value(),
        onEdge ? "check.m3.corner" : "check.m3.whereJointsMeet",
        f.id(),
        k.interior(),
        Angles.INSIDE.value());
  }

  private Finding curve(Judged slab, Face f, Tight t) {
    return finding(
        slab,
        new Subject.OnPanel(f.id()),
        t.at(),
        t.degrees(),
        Angles.CONCAVE_TURN.value(),
        "check.m3.curve",
        f.id(),
        t.degrees(),
        Angles.CONCAVE_TURN.value(),
        Length.inches(t.radius()));
  }
}
