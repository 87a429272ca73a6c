package org.jointwright.check.line;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Bends;
import org.jointwright.check.evidence.Bends.Bend;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.evidence.Slants;
import org.jointwright.check.evidence.Slants.Slant;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Cited;

/**
 * S10, straight lines: no joint stands a little off parallel, square or radial to the edges it
 * serves, and no line bends where it crosses another. The eye sees one degree.
 */
public final class CrookedJoints implements Check {
  @Override
  public String rule() {
    return "S10";
  }

  @Override
  public Severity severity() {
    return Severity.SHOULD;
  }

  @Override
  public List<Cited> sources() {
    return Angles.SLANT.sources();
  }

  @Override
  public List<Finding> findings(Judged slab) {
    List<Finding> findings = new ArrayList<>();
    double slant = Angles.SLANT.value();
    List<Slant> slants = Slants.of(slab);
    for (Slant s : slants) {
      findings.add(
          finding(
              slab,
              new Subject.OnJoint(s.joint().id()),
              s.at(),
              s.degrees(),
              slant,
              "check.s10.slants",
              s.joint().id(),
              s.degrees(),
              slant));
    }
    double bend = Angles.BEND.value();
    for (Bend b : Bends.of(slab)) {
      boolean isSaid =
          slants.stream()
              .map(Slant::joint)
              .anyMatch(j -> j.equals(b.joint()) || j.equals(b.from()));
      if (isSaid) {
        continue;
      }
      findings.add(
          finding(
              slab,
              new Subject.OnJoint(b.joint().id()),
              b.at(),
              b.degrees(),
              bend,
              "check.s10.bends",
              b.joint().id(),
              b.from().id(),
              b.degrees(),
              bend));
    }
    return findings;
  }
}
