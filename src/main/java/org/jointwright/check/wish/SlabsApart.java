package org.jointwright.check.wish;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.measure.Length;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Region;
import org.jointwright.shape.jts.Overlap;

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
    List<Finding> findings = new ArrayList<>();
    List<Slab> slabs = slab.plan().slabs();
    int own = slabs.indexOf(slab.slab());
    Region region = slab.slab().region();
    for (int i = 0; i < slabs.size(); i++) {
      Region other = slabs.get(i).region();
      double larger = other.area() - region.area();
      if (i == own || larger < 0 || (larger == 0 && i > own)) {
        continue;
      }
      Optional<Overlap> overlap = Overlap.of(region, other, Tolerance.LENGTH_INCHES);
      if (overlap.isPresent()) {
        findings.add(over(slab, slabs.get(i), overlap.get()));
      }
    }
    return findings;
  }

  private Finding over(Judged slab, Slab other, Overlap overlap) {
    double deep = overlap.depth(other.region());
    return finding(
        slab,
        new Subject.OnSlab(),
        overlap.widest().centre(),
        deep,
        Tolerance.LENGTH_INCHES,
        "check.m11.over",
        slab.slab().id(),
        other.id(),
        Length.inches(deep));
  }
}
