package org.jointwright.check.panel;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.evidence.SlabWidth;
import org.jointwright.check.face.Face;
import org.jointwright.measure.Length;
import org.jointwright.practice.Cited;
import org.jointwright.practice.PanelShape;
import org.jointwright.practice.Tolerance;

/** M5, narrow panels: a strip breaks across, except where the slab itself is no wider. */
public final class NarrowPanels implements Check {
  @Override
  public String rule() {
    return "M5";
  }

  @Override
  public Severity severity() {
    return Severity.MUST;
  }

  @Override
  public List<Cited> sources() {
    return PanelShape.NARROWEST.sources();
  }

  @Override
  public List<Finding> findings(Judged slab) {
    double least = PanelShape.narrowest(slab.slab().jointing()).inches();
    List<Finding> findings = new ArrayList<>();
    for (Face f : slab.faces()) {
      double width = f.measures().width();
      if (slab.isTip(f) || width >= least - Tolerance.LENGTH_INCHES) {
        continue;
      }
      double limit = Math.min(least, SlabWidth.at(f, slab.concrete()));
      if (width < limit - Tolerance.LENGTH_INCHES) {
        findings.add(
            finding(
                slab,
                List.of(
                    slab.slab().jointing().minPanel().isPresent()
                        ? Cited.plan()
                        : PanelShape.NARROWEST.source()),
                new Subject.OnPanel(f.id()),
                f.at(),
                width,
                limit,
                "check.m5.tooNarrow",
                f.id(),
                Length.inches(width),
                Length.inches(limit)));
      }
    }
    return findings;
  }
}
