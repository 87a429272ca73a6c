package org.jointwright.check.line;

import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.evidence.LineUps;
import org.jointwright.measure.Length;
import org.jointwright.practice.Cited;
import org.jointwright.practice.JointMarks;
import org.jointwright.practice.Tolerance;

/**
 * S7, lining up: across an edge that two slabs share with no filler between, the joints of the one
 * that has fewer there meet joints of the other, or a crack goes on from them into it.
 */
public final class MissedNeighbours implements Check {
  @Override
  public String rule() {
    return "S7";
  }

  @Override
  public Severity severity() {
    return Severity.SHOULD;
  }

  @Override
  public List<Cited> sources() {
    return List.of(JointMarks.MATCHED, Tolerance.LINE_UP.source());
  }

  @Override
  public List<Finding> findings(Judged slab) {
    return slab.lineUps().stream().filter(LineUps.End::misses).map(e -> finding(slab, e)).toList();
  }

  private Finding finding(Judged slab, LineUps.End e) {
    Subject subject = new Subject.OnJoint(e.joint().id());
    double most = Tolerance.LINE_UP.value().inches();
    // Infinity is no figure to print: the other slab has no joint at all there.
    return Double.isInfinite(e.nearest())
        ? finding(
            slab, subject, e.at(), e.nearest(), most, "check.s7.none", e.joint().id(), e.other())
        : finding(
            slab,
            subject,
            e.at(),
            e.nearest(),
            most,
            "check.s7.missed",
            e.joint().id(),
            e.other(),
            Length.inches(e.nearest()));
  }
}
