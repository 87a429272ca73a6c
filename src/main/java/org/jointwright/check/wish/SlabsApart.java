package org.jointwright.check.wish;

import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.joint.Lap;
import org.jointwright.measure.Length;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Tolerance;

/**
 * M11, slabs apart: no slab lies over another, for concrete is poured once in a place, and only
 * slabs that touch along a side have a joint between them. That is geometry of the plan and needs
 * no source; how much is forgiven is this program’s own figure. Of two it is said at the smaller,
 * which is the one to move.
 */
public final class SlabsApart implements Check {
  @Override
  public String rule() {
    return "M11";
  }

  @Override
  public Severity severity() {
    return Severity.MUST;
  }

  @Override
  public List<Cited> sources() {
    return List.of(Tolerance.LENGTH.source());
  }

  @Override
  public List<Finding> findings(Judged slab) {
    return Lap.of(slab.plan(), slab.slab()).stream().map(l -> over(slab, l)).toList();
  }

  private Finding over(Judged slab, Lap lap) {
    return finding(
        slab,
        new Subject.OnSlab(),
        lap.overlap().widest().centre(),
        lap.deep(),
        Tolerance.LENGTH_INCHES,
        "check.m11.over",
        lap.slab(),
        lap.other(),
        Length.inches(lap.deep()));
  }
}
