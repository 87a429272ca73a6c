package org.jointwright.check.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jointwright.check.face.Border;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** Lines of joints that bend a little where one joint ends and the next goes on. */
public final class Bends {
  private static final double TOGETHER = Tolerance.LINE_UP.value().inches();

  /**
   * A bend.
   *
   * @param joint the joint that goes on
   * @param from the joint it goes on from
   * @param at where
   * @param degrees how far the line turns there
   */
  public record Bend(Joint joint, Joint from, Point at, double degrees) {}

  /** An end of a joint, and how the joint leaves it. */
  private record Tail(Joint joint, Point at, Point away, Point far, Point arriving) {}

  private Bends() {}

  /**
   * The bends of over 1 degree up to where lines no longer count as one. Left out are those between
   * two joints that each stand square or radial to the edge they go to, and those between two that
   * follow a curve of the slab: the edges force them.
   */
  public static List<Bend> of(Judged slab) {
    List<Edge> edges = slab.concrete().edgesAndCutouts();
    List<Tail> tails = new ArrayList<>();
    for (Joint j : slab.joints()) {
      if (j.kind() == JointKind.CONTRACTION && !slab.corners().joints().contains(j.id())) {
        Edge first = j.path().edges().getFirst();
        Edge last = j.path().edges().getLast();
        tails.add(new Tail(j, first.start(), first.direction(0), last.end(), last.direction(1)));
        tails.add(
            new Tail(
                j,
                last.end(),
                last.direction(1).times(-1),
                first.start(),
                first.direction(0).times(-1)));
      }
    }
    Set<String> alongCurves = alongCurves(slab);
    List<Bend> bends = new ArrayList<>();
    for (int i = 0; i < tails.size(); i++) {
      for (Tail b : tails.subList(i + 1, tails.size())) {
        Tail a = tails.get(i);
        double degrees = turn(a, b);
        if (!a.joint().equals(b.joint())
            && a.at().distance(b.at()) <= TOGETHER
            && degrees > Angles.BEND.value()
            && degrees < Angles.THROUGH.value()
            && !(alongCurves.contains(a.joint().id()) && alongCurves.contains(b.joint().id()))
            && !(isSquare(edges, a) && isSquare(edges, b))
            && !(a.joint().locked() && b.joint().locked())) {
          bends.add(new Bend(b.joint(), a.joint(), b.at(), degrees));
        }
      }
    }
    return bends;
  }

  /** The joints with a panel beside them that has a curve of the slab's edge. */
  private static Set<String> alongCurves(Judged slab) {
    return Border.of(slab.faces()).stream()
        .filter(b -> b.one().isBowed() || b.other().isBowed())
        .map(Border::joint)
        .collect(Collectors.toSet());
  }

  private static double turn(Tail a, Tail b) {
    Point on = a.away().times(-1);
    return Math.toDegrees(Math.abs(Math.atan2(on.cross(b.away()), on.dot(b.away()))));
  }

  /** Whether a joint ends on an edge at its far end and stands square, or radial, to it. */
  private static boolean isSquare(List<Edge> edges, Tail t) {
    return Slants.offAt(edges, t.far(), t.arriving()) <= Angles.SLANT.value();
  }
}
