package org.jointwright.check.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.face.Border;
import org.jointwright.check.face.Face;
import org.jointwright.check.figure.SlabFigures;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Cost;
import org.jointwright.practice.PanelShape;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.EnclosingRectangle;
import org.jointwright.shape.Hull;
import org.jointwright.shape.Point;

/**
 * S2, length: no more is cut than is needed. A joint is spare when every rule that must hold still
 * holds without it and the layout without it costs less: found by leaving it out. Feet as such are
 * a figure, no fault.
 */
public final class SpareJoints implements Check {
  /**
   * So many panels are cut anew at most: with them a yard of 10,000 panels would take minutes. What
   * more might be spared there is not looked for.
   */
  private static final int MOST_CUT = 100_000;

  private final List<Check> must;
  private final int mostCut;

  /**
   * Ready to leave joints out.
   *
   * @param must the rules that must hold
   */
  public SpareJoints(List<Check> must) {
    this(must, MOST_CUT);
  }

  /** The same with another limit of panels that are cut anew. */
  SpareJoints(List<Check> must, int mostCut) {
    this.must = List.copyOf(must);
    this.mostCut = mostCut;
  }

  @Override
  public String rule() {
    return "S2";
  }

  @Override
  public Severity severity() {
    return Severity.SHOULD;
  }

  @Override
  public List<Cited> sources() {
    return Cost.TEE.sources();
  }

  @Override
  public List<Finding> findings(Judged slab) {
    int most = mostCut / Math.max(1, slab.faces().size());
    List<Joint> candidates = candidates(slab).stream().limit(most).toList();
    // First what must be: a slab that breaks a rule has other worries.
    if (candidates.isEmpty() || isBroken(slab)) {
      return List.of();
    }
    double cost = SlabFigures.of(slab).cost();
    List<Finding> findings = new ArrayList<>();
    for (Joint j : candidates) {
      Judged without = slab.without(j.id());
      double saved = cost - SlabFigures.of(without).cost();
      if (saved > Tolerance.LENGTH.value().feet() && !isBroken(without)) {
        findings.add(finding(slab, j));
      }
    }
    return findings;
  }

  private Finding finding(Judged slab, Joint j) {
    double length = j.path().length();
    Point middle = j.path().edges().get(j.path().edges().size() / 2).at(0.5);
    return finding(
        slab,
        new Subject.OnJoint(j.id()),
        middle,
        length,
        0,
        "check.s2.spare",
        j.id(),
        Length.inches(length));
  }

  private boolean isBroken(Judged slab) {
    return must.stream()
        .flatMap(c -> c.findings(slab).stream())
        .anyMatch(f -> f.severity() == Severity.MUST);
  }

  /** The joints that may be the user's to leave out and part no panels too long to be one. */
  private static List<Joint> candidates(Judged slab) {
    List<Border> borders = Border.of(slab.faces());
    Set<String> needed =
        borders.stream()
            .filter(b -> isTooLong(slab, b))
            .map(Border::joint)
            .collect(Collectors.toSet());
    Set<String> parting = borders.stream().map(Border::joint).collect(Collectors.toSet());
    return slab.joints().stream()
        .filter(j -> j.kind() == JointKind.CONTRACTION && !j.locked())
        .filter(j -> !slab.corners().joints().contains(j.id()))
        .filter(j -> parting.contains(j.id()) && !needed.contains(j.id()))
        .toList();
  }

  private static boolean isTooLong(Judged slab, Border b) {
    double most = slab.spacing().inches() * PanelShape.BOW.value() + Tolerance.LENGTH_INCHES;
    List<Point> both = Stream.of(b.one(), b.other()).flatMap(SpareJoints::corners).toList();
    Optional<Double> least =
        EnclosingRectangle.tied(Hull.of(both)).stream()
            .map(EnclosingRectangle::longSide)
            .min(Double::compare);
    return least.isPresent() && least.get() > most;
  }

  private static Stream<Point> corners(Face face) {
    return face.panel().ring().vertices().stream();
  }
}
