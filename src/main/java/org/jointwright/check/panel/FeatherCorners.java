package org.jointwright.check.panel;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Corner;
import org.jointwright.shape.Edge;

/**
 * N1, feather corners: a corner of the outline that is as thin as a feather breaks off. Said no
 * more where a corner joint cuts it: it then breaks where it was meant to.
 */
public final class FeatherCorners implements Check {
  private static final double SLACK = 1e-6;

  @Override
  public String rule() {
    return "N1";
  }

  @Override
  public Severity severity() {
    return Severity.NOTE;
  }

  @Override
  public List<Cited> sources() {
    return Angles.FEATHER.sources();
  }

  @Override
  public List<Finding> findings(Judged slab) {
    double least = Angles.FEATHER.value();
    List<Edge> edges = slab.slab().outline().ring().edges();
    List<Finding> findings = new ArrayList<>();
    for (Corner c : Corner.of(edges, Tolerance.LENGTH_INCHES)) {
      if (c.interior() < least - SLACK && !isCut(slab, c)) {
        findings.add(
            finding(
                slab,
                new Subject.AtCorner(c.after()),
                c.at(),
                c.interior(),
                least,
                "check.n1.feather",
                c.interior(),
                least));
      }
    }
    return findings;
  }

  private static boolean isCut(Judged slab, Corner c) {
    return slab.faces().stream()
        .filter(slab::isTip)
        .anyMatch(f -> f.panel().ring().distance(c.at()) <= Tolerance.LENGTH_INCHES);
  }
}
