package org.jointwright.check.panel;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.face.Face;
import org.jointwright.check.face.Knot;
import org.jointwright.check.face.Loop;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Tolerance;

/**
 * M4, acute angles: a sharp corner of a panel breaks off. One that the outline, an opening or a
 * box-out has already is excused as long as no joint splits it.
 */
public final class AcuteAngles implements Check {
  private static final double ACUTE = Angles.ACUTE.value() - Tolerance.ANGLE.value();

  @Override
  public String rule() {
    return "M4";
  }

  @Override
  public Severity severity() {
    return Severity.MUST;
  }

  @Override
  public List<Cited> sources() {
    return Angles.ACUTE.sources();
  }

  @Override
  public List<Finding> findings(Judged slab) {
    List<Finding> findings = new ArrayList<>();
    for (Face f : slab.faces()) {
      if (slab.isTip(f)) {
        continue;
      }
      for (Loop loop : f.loops()) {
        for (Knot k : loop.knots()) {
          if (k.interior() < ACUTE && !loop.isWhole(k)) {
            findings.add(finding(slab, f, k));
          }
        }
      }
    }
    return findings;
  }

  private Finding finding(Judged slab, Face f, Knot k) {
    return finding(
        slab,
        new Subject.OnPanel(f.id()),
        k.at(),
        k.interior(),
        Angles.ACUTE.value(),
        "check.m4.tooSharp",
        f.id(),
        k.interior(),
        Angles.ACUTE.value());
  }
}
