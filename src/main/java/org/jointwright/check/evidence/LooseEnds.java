package org.jointwright.check.evidence;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.along.Nearness;
import org.jointwright.plan.Joint;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** The ends of joints that lie on nothing. */
public final class LooseEnds {
  private LooseEnds() {}

  /**
   * An end that lies on nothing.
   *
   * @param joint the joint
   * @param at where it ends
   * @param gap how far it is to the nearest edge, box-out or other joint, inches
   */
  public record End(Joint joint, Point at, double gap) {}

  /** The loose ends of a slab's joints. */
  public static List<End> of(Judged slab) {
    List<Edge> fixed = slab.concrete().edgesAndCutouts();
    List<Joint> joints = slab.joints();
    List<End> loose = new ArrayList<>();
    for (Joint j : joints) {
      // A circle of two arcs ends on itself: each arc on the other.
      addIfLoose(loose, j, j.path().edges().getFirst(), j.path().start(), fixed, joints);
      addIfLoose(loose, j, j.path().edges().getLast(), j.path().end(), fixed, joints);
    }
    return loose;
  }

  private static void addIfLoose(
      List<End> loose, Joint joint, Edge last, Point end, List<Edge> fixed, List<Joint> joints) {
    double gap = Nearness.distance(fixed, end);
    for (Joint j : joints) {
      for (Edge e : j.path().edges()) {
        if (!e.equals(last)) {
          gap = Math.min(gap, e.distance(end));
        }
      }
    }
    if (gap > Nearness.ON) {
      loose.add(new End(joint, end, gap));
    }
  }
}
