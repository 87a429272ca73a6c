package org.jointwright.check.wish;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.along.Stretches;
import org.jointwright.check.along.Stretches.Stretch;
import org.jointwright.check.evidence.Judged;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.KeepClear;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Ring;

/**
 * M10, kept clear: no joint runs in a zone that the user keeps clear, a touch apart. A joint that
 * the user locked there is only noted. Filler cuts nothing: it stands where something holds.
 */
public final class ClearZones implements Check {
  @Override
  public String rule() {
    return "M10";
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
    List<KeepClear> zones = slab.slab().keepClear();
    List<Finding> findings = new ArrayList<>();
    for (Joint j : zones.isEmpty() ? List.<Joint>of() : slab.joints()) {
      for (KeepClear zone : zones) {
        List<Stretch> in = j.kind() == JointKind.ISOLATION ? List.of() : in(zone, j);
        double length = Stretches.length(in);
        if (length > Tolerance.LENGTH_INCHES) {
          findings.add(finding(slab, j, zone, in, length));
        }
      }
    }
    return findings;
  }

  /** The stretches of a joint that lie deeper in a zone than a touch. */
  private static List<Stretch> in(KeepClear zone, Joint j) {
    Ring ring = zone.outline().ring();
    return Stretches.of(
        j.path(), p -> ring.contains(p) && ring.distance(p) > Tolerance.LENGTH_INCHES);
  }

  private Finding finding(Judged slab, Joint j, KeepClear zone, List<Stretch> in, double length) {
    String key =
        zone.name().isBlank()
            ? j.locked() ? "check.m10.lockedUnnamed" : "check.m10.runsUnnamed"
            : j.locked() ? "check.m10.locked" : "check.m10.runs";
    return new Finding(
        rule(),
        j.locked() ? Severity.NOTE : Severity.MUST,
        slab.slab().id(),
        new Subject.OnJoint(j.id()),
        in.getFirst().middle(),
        length,
        0,
        key,
        List.of(j.id(), zone.name(), Length.inches(length)),
        List.of(Cited.plan()));
  }
}
