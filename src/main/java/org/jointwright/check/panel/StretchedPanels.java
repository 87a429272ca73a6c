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
import org.jointwright.practice.Angles;
import org.jointwright.practice.Cited;
import org.jointwright.practice.PanelShape;
import org.jointwright.practice.Tolerance;

/**
 * M2, aspect: no panel is much longer than it is wide. One that keeps a sharp corner of the outline
 * cannot help it and may be longer; round a very sharp one the figure says nothing.
 */
public final class StretchedPanels implements Check {
  private static final double SHARP = Angles.SHARP.value() + Tolerance.ANGLE.value();
  private static final double VERY_SHARP = Angles.VERY_SHARP.value() + Tolerance.ANGLE.value();

  @Override
  public String rule() {
    return "M2";
  }

  @Override
  public Severity severity() {
    return Severity.MUST;
  }

  @Override
  public List<Cited> sources() {
    return PanelShape.ASPECT_USUAL.sources();
  }

  @Override
  public List<Finding> findings(Judged slab) {
    List<Finding> findings = new ArrayList<>();
    for (Face f : slab.faces()) {
      double usual = PanelShape.aspect(slab.slab().jointing());
      double corner = f.sharpestOutlineCorner().orElse(180);
      double most = corner < SHARP ? Math.max(usual, PanelShape.ASPECT_LOOSE.value()) : usual;
      double aspect = f.measures().aspect();
      if (slab.isTip(f) || aspect <= usual + Tolerance.ASPECT.value()) {
        continue;
      }
      if (corner < VERY_SHARP) {
        findings.add(
            finding(
                slab,
                f,
                Severity.NOTE,
                usual,
                "check.m2.sharpCorner",
                List.of(f.id(), aspect, corner)));
      } else if (aspect > most + Tolerance.ASPECT.value()) {
        findings.add(
            finding(
                slab,
                f,
                severity(),
                most,
                "check.m2.tooThin",
                List.of(
                    f.id(),
                    Length.inches(f.measures().longSide()),
                    Length.inches(f.measures().shortSide()),
                    aspect,
                    most)));
      }
    }
    return findings;
  }

  private Finding finding(
      Judged slab, Face f, Severity severity, double limit, String key, List<Object> arguments) {
    Cited source =
        slab.slab().jointing().aspect().isPresent()
            ? Cited.plan()
            : PanelShape.ASPECT_USUAL.source();
    return new Finding(
        rule(),
        severity,
        slab.slab().id(),
        new Subject.OnPanel(f.id()),
        f.at(),
        f.measures().aspect(),
        limit,
        key,
        arguments,
        List.of(source));
  }
}
