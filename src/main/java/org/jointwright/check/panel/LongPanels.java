package org.jointwright.check.panel;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.face.Face;
import org.jointwright.measure.Length;
import org.jointwright.practice.Cited;
import org.jointwright.practice.PanelShape;
import org.jointwright.practice.Spacing;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.EnclosingRectangle;
import org.jointwright.shape.Hull;

/**
 * M1, spacing: no panel is longer than the joints may stand apart; a panel with an arc of the edge
 * a little more, since its bow is not its span.
 */
public final class LongPanels implements Check {
  @Override
  public String rule() {
    return "M1";
  }

  @Override
  public Severity severity() {
    return Severity.MUST;
  }

  @Override
  public List<Cited> sources() {
    List<Cited> sources = new ArrayList<>(Spacing.times(Spacing.DEFAULT).sources());
    sources.addAll(Spacing.CAP.sources());
    return sources;
  }

  @Override
  public List<Finding> findings(Judged slab) {
    double most = slab.spacing().inches();
    List<Finding> findings = new ArrayList<>();
    for (Face f : slab.faces()) {
      double limit = f.isBowed() ? most * PanelShape.BOW.value() : most;
      double length = length(f);
      if (length > limit + Tolerance.LENGTH_INCHES) {
        findings.add(
            finding(
                slab,
                List.of(Spacing.source(slab.slab().jointing())),
                new Subject.OnPanel(f.id()),
                f.at(),
                length,
                limit,
                "check.m1.tooLong",
                f.id(),
                Length.inches(length),
                Length.inches(limit)));
      }
    }
    return findings;
  }

  /** Of rectangles that tie, the one that is kindest to the panel counts. */
  private static double length(Face f) {
    return EnclosingRectangle.tied(Hull.of(f.panel().ring())).stream()
        .mapToDouble(EnclosingRectangle::longSide)
        .min()
        .orElseGet(f.measures()::longSide);
  }
}
