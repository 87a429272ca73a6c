package org.jointwright.check.panel;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.face.Face;
import org.jointwright.practice.Cited;
import org.jointwright.practice.PanelShape;

/** M8, whole panels: no panel has a hole in it or is an L or a T that its rectangle hides. */
public final class WholePanels implements Check {
  /** A smaller hole is a hair between two lines that were meant as one, square inches. */
  private static final double HAIR = 0.144;

  /** What rounding may take from a share. */
  private static final double SLACK = 1e-6;

  @Override
  public String rule() {
    return "M8";
  }

  @Override
  public Severity severity() {
    return Severity.MUST;
  }

  @Override
  public List<Cited> sources() {
    return PanelShape.LEAST_FILL.sources();
  }

  @Override
  public List<Finding> findings(Judged slab) {
    List<Finding> findings = new ArrayList<>();
    double least = PanelShape.LEAST_FILL.value();
    for (Face f : slab.faces()) {
      int holes = (int) f.panel().region().holes().stream().filter(h -> h.area() > HAIR).count();
      if (holes > 0) {
        findings.add(
            finding(slab, new Subject.OnPanel(f.id()), f.at(), holes, 0, "check.m8.hole", f.id()));
      }
      double fill = f.measures().fill();
      if (fill < least - SLACK && !slab.isTip(f)) {
        findings.add(
            finding(
                slab,
                new Subject.OnPanel(f.id()),
                f.at(),
                fill,
                least,
                "check.m8.hollow",
                f.id(),
                fill,
                least));
      }
    }
    return findings;
  }
}
