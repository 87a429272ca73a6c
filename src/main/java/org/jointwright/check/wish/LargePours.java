package org.jointwright.check.wish;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.face.Face;
import org.jointwright.joint.Placement;
import org.jointwright.joint.Placements;
import org.jointwright.measure.Length;
import org.jointwright.measure.Volume;
import org.jointwright.plan.Pour;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Tolerance;

/**
 * P1, pours: what is poured in one go holds no more concrete, and is no wider, than the user says
 * that the crew can place and strike.
 */
public final class LargePours implements Check {
  /** What rounding may add to a volume, as a share. */
  private static final double SLACK = 1e-6;

  @Override
  public String rule() {
    return "P1";
  }

  @Override
  public Severity severity() {
    return Severity.SHOULD;
  }

  @Override
  public List<Cited> sources() {
    return List.of(Cited.plan());
  }

  @Override
  public List<Finding> findings(Judged slab) {
    Pour limit = slab.plan().pour();
    List<Finding> findings = new ArrayList<>();
    for (Placement pour : limit.isLimited() ? Placements.of(slab.laid()) : List.<Placement>of()) {
      Face largest =
          slab.faces().stream()
              .filter(f -> pour.panels().contains(f.panel()))
              .max(Comparator.comparingDouble(f -> f.measures().area()))
              .orElseThrow();
      limit.most().ifPresent(most -> tooMuch(slab, pour, largest, most, findings));
      limit.strip().ifPresent(strip -> tooWide(slab, pour, largest, strip, findings));
    }
    return findings;
  }

  private void tooMuch(
      Judged slab, Placement pour, Face largest, Volume most, List<Finding> findings) {
    Volume volume = pour.volume();
    if (volume.cubicInches() > most.cubicInches() * (1 + SLACK)) {
      findings.add(
          finding(
              slab,
              new Subject.OnPanel(largest.id()),
              largest.at(),
              volume.cubicInches(),
              most.cubicInches(),
              "check.p1.tooMuch",
              largest.id(),
              volume,
              most));
    }
  }

  private void tooWide(
      Judged slab, Placement pour, Face largest, Length strip, List<Finding> findings) {
    double width = pour.width();
    if (width > strip.inches() + Tolerance.LENGTH_INCHES) {
      findings.add(
          finding(
              slab,
              new Subject.OnPanel(largest.id()),
              largest.at(),
              width,
              strip.inches(),
              "check.p1.tooWide",
              largest.id(),
              Length.inches(width),
              strip));
    }
  }
}
