package org.jointwright.fix;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Subject;
import org.jointwright.measure.Length;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.practice.Corners;
import org.jointwright.shape.Edge;

/** Cuts the tip of a sharp corner off with a joint, so that it breaks where it was meant to. */
final class CutTip implements Remedy {
  private static final double NEAR = Corners.CORNER_JOINT_NEAR.value().inches();
  private static final double FAR = Corners.CORNER_JOINT_FAR.value().inches();

  @Override
  public List<Fix> proposals(Broken broken) {
    List<Fix> fixes = new ArrayList<>();
    if (broken.finding().subject() instanceof Subject.AtCorner at) {
      List<Edge> edges = broken.slab().outline().ring().edges();
      double shorter =
          Math.min(
              edges.get(at.edge()).length(),
              edges.get(Math.floorMod(at.edge() - 1, edges.size())).length());
      String corner = broken.marks().side(broken.finding().at());
      for (double legs : List.of((NEAR + FAR) / 2, FAR, NEAR)) {
        if (legs < shorter) {
          fixes.add(
              Fix.of(
                  "fix.tip",
                  "fix.did.tip",
                  List.of(corner, Length.inches(legs)),
                  new JointEdit.AddCornerJoint(broken.slab().id(), at.edge(), legs)));
        }
      }
    }
    return fixes;
  }
}
