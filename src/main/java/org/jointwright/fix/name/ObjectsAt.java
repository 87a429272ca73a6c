package org.jointwright.fix.name;

import java.util.List;
import java.util.Optional;
import org.jointwright.check.Finding;
import org.jointwright.check.Subject;
import org.jointwright.joint.Panel;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.shape.Point;

/** The fixed objects that have a part in a finding. */
public final class ObjectsAt {
  /** A box-out this near to a finding has its part in it, inches. */
  private static final double BESIDE = 1;

  private ObjectsAt() {}

  /**
   * The ids of the objects whose box-outs the finding is at, or the panel or joint that it is of;
   * all of the slab where it is of the whole slab.
   *
   * @param slab the slab of the finding
   */
  public static List<String> of(SlabLayout slab, Finding finding) {
    Optional<Panel> panel =
        finding
            .panel()
            .flatMap(id -> slab.panels().stream().filter(p -> p.id().equals(id)).findFirst());
    Optional<Joint> joint =
        finding
            .joint()
            .flatMap(id -> slab.joints().stream().filter(j -> j.id().equals(id)).findFirst());
    return slab.boxOuts().stream()
        .filter(
            box ->
                finding.subject() instanceof Subject.OnSlab
                    || touches(box, List.of(finding.at()))
                    || panel.filter(p -> touches(box, p.region().outer().vertices())).isPresent()
                    || joint
                        .filter(j -> touches(box, List.of(j.path().start(), j.path().end())))
                        .isPresent())
        .map(BoxOut::fixed)
        .distinct()
        .toList();
  }

  private static boolean touches(BoxOut box, List<Point> points) {
    return points.stream().anyMatch(p -> box.outline().ring().distance(p) <= BESIDE);
  }
}
