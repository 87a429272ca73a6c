package org.jointwright.check.line;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.along.Nearness;
import org.jointwright.check.along.Stretches;
import org.jointwright.check.along.Stretches.Stretch;
import org.jointwright.check.evidence.Judged;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Edge;

/** M9, locked joints: what the user locked is there, as one joint or as several in its line. */
public final class LockedJoints implements Check {
  @Override
  public String rule() {
    return "M9";
  }

  @Override
  public Severity severity() {
    return Severity.MUST;
  }

  @Override
  public List<Cited> sources() {
    return List.of(Cited.plan());
  }

  @Override
  public List<Finding> findings(Judged slab) {
    List<Finding> findings = new ArrayList<>();
    for (Joint locked : slab.locked()) {
      List<Edge> there = slab.edgesOf(locked.kind());
      List<Stretch> missing =
          Stretches.of(locked.path(), p -> !Nearness.isOn(there, p, Nearness.ON));
      double length = Stretches.length(missing);
      if (length > 2 * Tolerance.LENGTH_INCHES) {
        findings.add(
            finding(
                slab,
                new Subject.OnJoint(locked.id()),
                missing.getFirst().middle(),
                length,
                0,
                "check.m9.missing",
                locked.id(),
                Length.inches(length)));
      }
    }
    return findings;
  }
}
