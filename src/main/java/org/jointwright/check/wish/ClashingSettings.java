package org.jointwright.check.wish;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.along.Stretches;
import org.jointwright.check.evidence.Judged;
import org.jointwright.joint.Source;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.plan.KeepClear;
import org.jointwright.practice.BoxOuts;
import org.jointwright.practice.Cited;
import org.jointwright.practice.PanelShape;
import org.jointwright.practice.Spacing;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Point;
import org.jointwright.shape.jts.InscribedCircle;

/**
 * C1, clashing settings: what the user asks cannot be had at once, whoever lays the joints. Said
 * only where an argument shows it:
 *
 * <ul>
 *   <li>A panel is no wider than it is long. Where joints may stand no farther apart than the
 *       narrowest panel is wide, no panel meets both.
 *   <li>What lies in a zone that is kept clear stays in one panel. Where it runs farther than
 *       joints may stand apart, that panel is too long.
 *   <li>A joint must leave each box-out amid the slab, and a box-out reaches only so far. Where a
 *       zone that is kept clear reaches farther round an object, no joint can leave its box-out.
 *   <li>A corner that a locked joint makes too sharp, a strip that it makes too narrow, and a
 *       locked joint that bends, runs along an edge or leaves the slab stay so whatever is laid
 *       besides: more joints only cut panels smaller.
 * </ul>
 */
public final class ClashingSettings implements Check {
  private static final Set<String> LASTING = Set.of("M4", "M5", "M6");

  /** The messages of rules that no further joint can mend. */
  private static final Set<String> FOR_GOOD =
      Set.of(
          "check.m4.tooSharp",
          "check.m5.tooNarrow",
          "check.m6.bent",
          "check.m6.outside",
          "check.m6.alongEdge",
          "check.m6.onOther");

  private final List<Check> must;

  /**
   * Ready to look at locked joints alone.
   *
   * @param must the rules that must hold
   */
  public ClashingSettings(List<Check> must) {
    this.must = List.copyOf(must);
  }

  @Override
  public String rule() {
    return "C1";
  }

  @Override
  public Severity severity() {
    return Severity.NOTE;
  }

  @Override
  public List<Cited> sources() {
    return List.of(Cited.plan());
  }

  @Override
  public List<Finding> findings(Judged slab) {
    List<Finding> findings = new ArrayList<>();
    spacing(slab).ifPresent(findings::add);
    // Locked joints may cross a zone: the user’s own word against the other.
    List<KeepClear> zones = slab.locked().isEmpty() ? slab.slab().keepClear() : uncrossed(slab);
    findings.addAll(zones(slab, zones));
    findings.addAll(hemmed(slab, zones));
    findings.addAll(locked(slab));
    return findings;
  }

  private Optional<Finding> spacing(Judged slab) {
    double spacing = slab.spacing().inches();
    Length least = PanelShape.narrowest(slab.slab().jointing());
    if (spacing + 2 * Tolerance.LENGTH_INCHES >= least.inches()) {
      return Optional.empty();
    }
    // A slab narrower than the narrowest panel is let off by that rule.
    InscribedCircle widest = InscribedCircle.of(slab.slab().region());
    if (widest.diameter() < least.inches()) {
      return Optional.empty();
    }
    return Optional.of(
        finding(
            slab,
            new Subject.OnSlab(),
            widest.centre(),
            spacing,
            least.inches(),
            "check.c1.spacing",
            slab.slab().id(),
            slab.spacing(),
            least));
  }

  private List<Finding> hemmed(Judged slab, List<KeepClear> zones) {
    return HemmedObjects.of(slab.plan(), slab.slab(), zones).stream()
        .map(
            h ->
                finding(
                    slab,
                    Stream.of(Cited.plan(), BoxOuts.REACH.source()).distinct().toList(),
                    new Subject.OnFixedObject(h.object().id()),
                    h.object().shape().ring().box().centre(),
                    h.beyond(),
                    BoxOuts.REACH.value().inches(),
                    h.zone().name().isBlank() ? "check.c1.objectUnnamed" : "check.c1.object",
                    h.object().id(),
                    h.zone().name(),
                    Length.inches(h.beyond()),
                    BoxOuts.REACH.value()))
        .toList();
  }

  private List<Finding> zones(Judged slab, List<KeepClear> zones) {
    List<Finding> findings = new ArrayList<>();
    for (KeepClear zone : zones) {
      for (UncutZones.Uncut u : UncutZones.of(slab.slab().region(), zone.outline().ring())) {
        double most = slab.spacing().inches() + Tolerance.LENGTH_INCHES;
        if (u.least() > most) {
          findings.add(
              finding(
                  slab,
                  // The zone is the user’s; how far apart joints may stand need not be.
                  Stream.of(Cited.plan(), Spacing.source(slab.slab().jointing()))
                      .distinct()
                      .toList(),
                  new Subject.OnSlab(),
                  u.at(),
                  u.runs(),
                  slab.spacing().inches(),
                  zone.name().isBlank() ? "check.c1.zoneUnnamed" : "check.c1.zone",
                  zone.name(),
                  Length.inches(u.runs()),
                  slab.spacing()));
        }
      }
    }
    return findings;
  }

  private static List<KeepClear> uncrossed(Judged slab) {
    return slab.slab().keepClear().stream()
        .filter(
            z ->
                slab.locked().stream()
                    .noneMatch(
                        j ->
                            Stretches.length(
                                    Stretches.of(j.path(), p -> z.outline().ring().contains(p)))
                                > Tolerance.LENGTH_INCHES))
        .toList();
  }

  private List<Finding> locked(Judged slab) {
    if (slab.locked().isEmpty()) {
      return List.of();
    }
    Judged bare = slab.withOnly(List.of());
    Judged alone = slab.withOnly(slab.locked());
    Set<String> own = forGood(bare).stream().map(Finding::key).collect(Collectors.toSet());
    Set<String> said = new HashSet<>();
    List<Finding> findings = new ArrayList<>();
    for (Finding f : forGood(alone)) {
      Optional<String> joint = f.joint().or(() -> nearest(alone, f));
      if (!own.contains(f.key()) && joint.isPresent() && said.add(joint.get() + f.key())) {
        findings.add(
            finding(
                slab,
                new Subject.OnJoint(joint.get()),
                f.at(),
                f.measured(),
                f.limit(),
                switch (f.rule()) {
                  case "M4" -> "check.c1.lockedSharp";
                  case "M5" -> "check.c1.lockedNarrow";
                  default -> "check.c1.lockedRun";
                },
                joint.get(),
                "M6".equals(f.rule()) ? f.rule() : measure(f, f.measured()),
                measure(f, f.limit())));
      }
    }
    return findings;
  }

  private static Object measure(Finding f, double value) {
    return f.rule().equals("M5") ? Length.inches(value) : value;
  }

  private List<Finding> forGood(Judged slab) {
    return must.stream()
        .filter(c -> LASTING.contains(c.rule()))
        .flatMap(c -> c.findings(slab).stream())
        .filter(f -> f.severity() == Severity.MUST && FOR_GOOD.contains(f.key()))
        .toList();
  }

  /** The locked joint beside a panel that runs nearest to the place of its finding. */
  private static Optional<String> nearest(Judged slab, Finding f) {
    Point at = f.at();
    Set<String> beside =
        slab.faces().stream()
            .filter(p -> f.panel().equals(Optional.of(p.id())))
            .flatMap(p -> p.steps())
            .flatMap(
                s ->
                    s.source() instanceof Source.OnJoint j
                        ? Stream.of(j.joint())
                        : Stream.<String>empty())
            .collect(Collectors.toSet());
    return slab.joints().stream()
        .filter(j -> beside.contains(j.id()))
        .min(Comparator.comparingDouble(j -> j.path().distance(at)))
        .map(Joint::id);
  }
}
