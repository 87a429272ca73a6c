package org.jointwright.check.line;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.measure.Length;
import org.jointwright.plan.How;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.practice.Cited;
import org.jointwright.practice.JointDepth;

/** S9, depth: a contraction joint is deep enough to take the crack. */
public final class ShallowJoints implements Check {
  /** What turning units into each other may take, inches. */
  private static final double SLACK = 1e-5;

  @Override
  public String rule() {
    return "S9";
  }

  @Override
  public Severity severity() {
    return Severity.SHOULD;
  }

  @Override
  public List<Cited> sources() {
    return JointDepth.SHARE.sources();
  }

  @Override
  public List<Finding> findings(Judged slab) {
    List<Finding> findings = new ArrayList<>();
    for (Joint j : slab.slab().joints()) {
      if (j.kind() == JointKind.CONTRACTION && j.depth().isPresent()) {
        Length depth = j.depth().get();
        How how = j.how().orElse(JointDepth.USUAL);
        Length least = JointDepth.least(slab.slab().thickness(), how);
        if (depth.inches() < least.inches() - SLACK) {
          findings.add(finding(slab, j, how, depth, least));
        }
      }
    }
    return findings;
  }

  private Finding finding(Judged slab, Joint j, How how, Length depth, Length least) {
    String key =
        switch (how) {
          case TOOLED -> "check.s9.tooled";
          case SAWN, EARLY_ENTRY -> "check.s9.sawn";
        };
    return finding(
        slab,
        JointDepth.limit(how).sources(),
        new Subject.OnJoint(j.id()),
        j.path().edges().getFirst().at(0.5),
        depth.inches(),
        least.inches(),
        key,
        j.id(),
        depth,
        least,
        Length.inches(least.inches() - depth.inches()));
  }
}
