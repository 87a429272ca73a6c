package org.jointwright.check.line;

import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.evidence.OffMarks;
import org.jointwright.check.evidence.OffMarks.Off;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.practice.Cited;
import org.jointwright.practice.JointMarks;

/**
 * S6, marks: joints end at whole inches from a corner, or at whole 10 mm, where nothing forces
 * another place. A finisher would rather measure 9 ft than 8 ft 11 13/16 in. One finding for the
 * slab, however many ends there are.
 */
public final class OffMarkJoints implements Check {
  @Override
  public String rule() {
    return "S6";
  }

  @Override
  public Severity severity() {
    return Severity.SHOULD;
  }

  @Override
  public List<Cited> sources() {
    return JointMarks.INCH.sources();
  }

  @Override
  public List<Finding> findings(Judged slab) {
    List<Off> off = OffMarks.of(slab);
    if (off.isEmpty()) {
      return List.of();
    }
    Off first = off.getFirst();
    boolean metric = UnitSystem.of(slab.plan().unit()) == UnitSystem.METRIC;
    return List.of(
        finding(
            slab,
            new Subject.OnSlab(),
            first.end().at(),
            off.size(),
            0,
            metric ? "check.s6.metric" : "check.s6.inch",
            off.size(),
            new Subject.OnJoint(first.end().joint().id()),
            Length.inches(first.along()),
            first.tape().name()));
  }
}
