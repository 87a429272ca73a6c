package org.jointwright.check.hold;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.evidence.Judged;
import org.jointwright.practice.BoxOuts;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Isolation;

/**
 * M7, isolation: filler stands between the slab and whatever holds it: along the whole of each edge
 * against a building, concrete or the street, and all round the box-out of each fixed object.
 */
public final class IsolationWhereHeld implements Check {
  @Override
  public String rule() {
    return "M7";
  }

  @Override
  public Severity severity() {
    return Severity.MUST;
  }

  @Override
  public List<Cited> sources() {
    List<Cited> sources = new ArrayList<>();
    sources.add(Isolation.WHERE);
    sources.add(Isolation.WHERE_FLATWORK);
    sources.addAll(BoxOuts.CLEAR.sources());
    return sources;
  }

  @Override
  public List<Finding> findings(Judged slab) {
    List<Finding> findings = new ArrayList<>(new HeldEdges(this, slab).findings());
    findings.addAll(new HeldObjects(this, slab).findings());
    return findings;
  }
}
