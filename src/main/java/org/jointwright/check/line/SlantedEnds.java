package org.jointwright.check.line;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.JointEnds;
import org.jointwright.check.evidence.JointEnds.End;
import org.jointwright.check.evidence.Judged;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Arc;

/**
 * S5, edge angle: joints meet straight edges about square, and arcs along the radius. Ends at
 * corners are left out. One so slanted that the panel beside it comes to a sharp point is M4's.
 */
public final class SlantedEnds implements Check {
  private static final double SHARP = 90 - Angles.ACUTE.value() + Tolerance.ANGLE.value();

  @Override
  public String rule() {
    return "S5";
  }

  @Override
  public Severity severity() {
    return Severity.SHOULD;
  }

  @Override
  public List<Cited> sources() {
    return Angles.EDGE.sources();
  }

  @Override
  public List<Finding> findings(Judged slab) {
    double most = Angles.EDGE.value();
    List<Finding> findings = new ArrayList<>();
    for (End e : JointEnds.of(slab)) {
      double off = e.offSquare();
      if (!e.atCorner() && off > most + Tolerance.ANGLE.value() && off <= SHARP) {
        findings.add(
            finding(
                slab,
                new Subject.OnJoint(e.joint().id()),
                e.at(),
                off,
                most,
                e.edge() instanceof Arc ? "check.s5.offRadius" : "check.s5.offSquare",
                e.joint().id(),
                off,
                most));
      }
    }
    return findings;
  }
}
