package org.jointwright.check.panel;

import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.face.Face;
import org.jointwright.check.figure.SlabFigures;
import org.jointwright.practice.Cited;
import org.jointwright.practice.PanelShape;

/** S3, even panels: the panels of a slab are of a size. One finding for the slab. */
public final class UnevenPanels implements Check {
  @Override
  public String rule() {
    return "S3";
  }

  @Override
  public Severity severity() {
    return Severity.SHOULD;
  }

  @Override
  public List<Cited> sources() {
    return PanelShape.SPREAD.sources();
  }

  @Override
  public List<Finding> findings(Judged slab) {
    double spread = SlabFigures.spread(slab);
    double most = PanelShape.SPREAD.value();
    if (spread <= most) {
      return List.of();
    }
    Face largest = slab.largestPanel().orElseThrow();
    return List.of(
        finding(
            slab,
            new Subject.OnSlab(),
            largest.at(),
            spread,
            most,
            "check.s3.uneven",
            slab.slab().id(),
            spread,
            most,
            largest.id()));
  }
}
