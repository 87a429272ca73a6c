package org.jointwright.check.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.along.Nearness;
import org.jointwright.check.along.Stretches;
import org.jointwright.check.along.Stretches.Stretch;
import org.jointwright.check.evidence.Judged;
import org.jointwright.measure.Length;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Opening;
import org.jointwright.practice.Cited;
import org.jointwright.practice.Isolation;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Ring;

/** The part of M7 that looks along edges. */
final class HeldEdges {
  private final Check check;
  private final Judged slab;
  private final List<Edge> filler;
  private final List<Finding> findings = new ArrayList<>();

  HeldEdges(Check check, Judged slab) {
    this.check = check;
    this.slab = slab;
    filler = slab.fillerOfAllSlabs();
  }

  List<Finding> findings() {
    Ring outline = slab.slab().outline().ring();
    for (int i = 0; i < outline.edges().size(); i++) {
      judge(outline.edges().get(i), slab.slab().edge(i), OptionalInt.empty(), i);
    }
    List<Opening> openings = slab.slab().openings();
    for (int n = 0; n < openings.size(); n++) {
      List<Edge> edges = openings.get(n).outline().ring().edges();
      for (int i = 0; i < edges.size(); i++) {
        judge(edges.get(i), openings.get(n).edge(i), OptionalInt.of(n), i);
      }
    }
    return findings;
  }

  private void judge(Edge edge, EdgeSetting setting, OptionalInt opening, int number) {
    Subject subject = new Subject.OnEdge(opening, number);
    if (setting.needsIsolation()) {
      bare(edge, setting, subject);
    } else if (setting.against().needsIsolation()) {
      findings.add(
          finding(
              Severity.NOTE,
              subject,
              new Stretch(edge, 0, 1),
              0,
              "check.m7.floats",
              List.of(Length.inches(edge.length())),
              Isolation.NEEDLESS));
    }
  }

  private void bare(Edge edge, EdgeSetting setting, Subject subject) {
    List<Stretch> bare =
        Stretches.of(
            edge,
            p ->
                !Nearness.isOn(filler, p, Nearness.ON)
                    && !slab.concrete().isCutOut(p, Tolerance.LENGTH_INCHES));
    double length = Stretches.length(bare);
    if (length > 2 * Tolerance.LENGTH_INCHES) {
      String key =
          switch (setting.against()) {
            case BUILDING -> "check.m7.bareBuilding";
            case CONCRETE -> "check.m7.bareConcrete";
            case STREET -> "check.m7.bareStreet";
            case OPEN, ASPHALT -> throw new IllegalStateException("no filler is asked at " + edge);
          };
      findings.add(
          finding(
              Severity.MUST,
              subject,
              bare.getFirst(),
              length,
              key,
              List.of(Length.inches(length)),
              Isolation.WHERE));
    }
  }

  private Finding finding(
      Severity severity,
      Subject subject,
      Stretch at,
      double measured,
      String key,
      List<Object> arguments,
      Cited source) {
    return new Finding(
        check.rule(),
        severity,
        slab.slab().id(),
        subject,
        at.middle(),
        measured,
        0,
        key,
        arguments,
        List.of(source));
  }
}
