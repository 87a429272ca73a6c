package org.jointwright.check.panel;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.face.Face;
import org.jointwright.measure.Area;
import org.jointwright.practice.Cited;
import org.jointwright.practice.PanelShape;

/** S8, compact panels: a panel fills most of its rectangle and is no scrap among the others. */
public final class ScrappyPanels implements Check {
  /** What rounding may take from a share. */
  private static final double SLACK = 1e-6;

  @Override
  public String rule() {
    return "S8";
  }

  @Override
  public Severity severity() {
    return Severity.SHOULD;
  }

  @Override
  public List<Cited> sources() {
    return PanelShape.USUAL_FILL.sources();
  }

  @Override
  public List<Finding> findings(Judged slab) {
    List<Face> panels = slab.panels();
    double mean = panels.stream().mapToDouble(f -> f.measures().area()).average().orElse(0);
    double least = PanelShape.SMALLEST.value() * mean;
    List<Finding> findings = new ArrayList<>();
    for (Face f : panels) {
      double fill = f.measures().fill();
      // Under the lower limit M8 has said so.
      if (fill < PanelShape.USUAL_FILL.value() - SLACK
          && fill >= PanelShape.LEAST_FILL.value() - SLACK) {
        findings.add(thin(slab, f, fill));
      }
      if (f.measures().area() < least * (1 - SLACK)) {
        findings.add(small(slab, f, least));
      }
    }
    return findings;
  }

  private Finding thin(Judged slab, Face f, double fill) {
    double least = PanelShape.USUAL_FILL.value();
    return finding(
        slab,
        new Subject.OnPanel(f.id()),
        f.at(),
        fill,
        least,
        "check.s8.thin",
        f.id(),
        fill,
        least);
  }

  private Finding small(Judged slab, Face f, double least) {
    double area = f.measures().area();
    return finding(
        slab,
        new Subject.OnPanel(f.id()),
        f.at(),
        area,
        least,
        "check.s8.small",
        f.id(),
        new Area(area),
        new Area(least));
  }
}
