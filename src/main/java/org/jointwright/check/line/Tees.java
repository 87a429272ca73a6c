package org.jointwright.check.line;

import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.evidence.Meetings.Meeting;
import org.jointwright.practice.Cited;
import org.jointwright.practice.JointRuns;

/** S1, tees: a crack tends to run on from a contraction joint that ends on the side of another. */
public final class Tees implements Check {
  private static final double TEE = 1;
  private static final double Y = 0.5;

  @Override
  public String rule() {
    return "S1";
  }

  @Override
  public Severity severity() {
    return Severity.SHOULD;
  }

  @Override
  public List<Cited> sources() {
    return List.of(JointRuns.CONTINUOUS, JointRuns.NOT_AT_OTHERS);
  }

  @Override
  public List<Finding> findings(Judged slab) {
    return slab.meetings().stream().map(m -> finding(slab, m)).toList();
  }

  private Finding finding(Judged slab, Meeting m) {
    return finding(
        slab,
        List.of(JointRuns.CONTINUOUS),
        new Subject.OnJoint(m.joint()),
        m.at(),
        m.isY() ? Y : TEE,
        0,
        m.isY() ? "check.s1.y" : "check.s1.tee",
        m.joint());
  }
}
