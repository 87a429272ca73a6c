package org.jointwright.check.panel;

import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.face.Face;
import org.jointwright.practice.Cited;
import org.jointwright.practice.PanelShape;
import org.jointwright.practice.Tolerance;

/**
 * S4, square panels: on the whole a slab's panels are nearly square, even where the plan lets
 * single ones be longer. One finding for the slab; one panel alone is a matter of the outline.
 */
public final class LongPanelsOnTheWhole implements Check {
  @Override
  public String rule() {
    return "S4";
  }

  @Override
  public Severity severity() {
    return Severity.SHOULD;
  }

  @Override
  public List<Cited> sources() {
    return PanelShape.ASPECT_USUAL.sources();
  }

  @Override
  public List<Finding> findings(Judged slab) {
    List<Face> panels = slab.panels();
    double mean = panels.stream().mapToDouble(f -> f.measures().aspect()).average().orElse(1);
    double most = PanelShape.ASPECT_USUAL.value();
    if (panels.size() < 2 || mean <= most + Tolerance.ASPECT.value()) {
      return List.of();
    }
    return List.of(
        finding(
            slab,
            new Subject.OnSlab(),
            panels.getFirst().at(),
            mean,
            most,
            "check.s4.long",
            slab.slab().id(),
            mean,
            most));
  }
}
