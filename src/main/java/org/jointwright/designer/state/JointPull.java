package org.jointwright.designer.state;

import java.util.Comparator;
import java.util.Optional;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.sketch.Guide;
import org.jointwright.designer.sketch.Pencil;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/**
 * What draws a joint that is slid sideways: corners and ends of other joints that it would run
 * through, and even places where it ends.
 *
 * @param guide what draws it
 * @param by how much farther it is to be slid, square to itself
 */
public record JointPull(Guide guide, Point by) {
  /** An end this near to a line stands on it, inches. */
  private static final double ON = 0.5;

  /** Joints that turn less than this from each other run alongside: sine of the angle. */
  private static final double ALONGSIDE = 0.1;

  /**
   * What draws a joint most, within reach.
   *
   * @param plan the plan without the joint
   * @param slab the slab's id
   * @param there where the joint runs without help
   * @param reach from how far it is drawn, inches
   */
  public static Optional<JointPull> near(Plan plan, String slab, Path there, double reach) {
    Slab in = plan.slab(slab).orElseThrow();
    Point across = there.end().minus(there.start()).unit().left();
    return Attraction.joint(plan, Draft.begun(Drawn.JOINT), 1).stops().stream()
        .map(Pencil::guides)
        .map(g -> g.getFirst())
        .filter(g -> isIn(in, g.to()) && !isOfOneAlongside(in, g, there))
        .filter(g -> g.kind() != Guide.Kind.EVEN || isEnd(there, g.to(), reach))
        .map(g -> new JointPull(g, across.times(g.to().minus(there.start()).dot(across))))
        .filter(p -> p.by.norm() <= reach)
        .min(Comparator.comparingDouble(p -> p.by.norm()));
  }

  private static boolean isIn(Slab slab, Point p) {
    return slab.outline().ring().contains(p) || slab.outline().ring().distance(p) <= ON;
  }

  private static boolean isEnd(Path path, Point p, double reach) {
    return Math.min(path.start().distance(p), path.end().distance(p)) <= 1.5 * reach;
  }

  /** The end of a joint alongside is no place for another: both would be one. */
  private static boolean isOfOneAlongside(Slab slab, Guide guide, Path path) {
    Point way = path.end().minus(path.start()).unit();
    return guide.kind() == Guide.Kind.AT_JOINT
        && slab.joints().stream()
            .filter(j -> j.kind() != JointKind.ISOLATION)
            .map(Joint::path)
            .filter(p -> p.distance(guide.to()) <= ON)
            .anyMatch(p -> Math.abs(p.edges().getFirst().direction(0.5).cross(way)) < ALONGSIDE);
  }
}
