package org.jointwright.wild;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.check.judge.Checks;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.file.PlanWriter;
import org.jointwright.file.Remark;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.Panel;
import org.jointwright.joint.SlabLayout;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.util.AssertionFailedException;

/** Puts one plan through reading, cutting into panels and judging, and looks at all that comes. */
final class Probe {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);

  /** Areas of one panel by two ways differ by no more, square inches: 0.01 sq ft. */
  private static final double SAME_AREA = 1.44;

  private final Tally tally;

  Probe(Tally tally) {
    this.tally = tally;
  }

  /** What is wrong with what comes of a plan that holds its joints; nothing where all is well. */
  List<String> given(Plan plan) {
    List<String> faults = new ArrayList<>();
    Verdict second = SecondReading.of(plan.slabs().getFirst());
    switch (PlanReader.read(PlanWriter.bytes(plan))) {
      case PlanReading.Refused(List<Remark> problems) -> {
        tally.refused();
        String said = problems.getFirst().say(WORDS);
        if (said.isBlank() || second == Verdict.KEPT) {
          faults.add("refused for nothing: " + said);
        }
      }
      case PlanReading.ReadPlan(Plan read, List<Remark> repairs, _) -> {
        if (second == Verdict.BROKEN) {
          faults.add("read though it is no slab");
        } else {
          Layout layout = Layouts.of(read);
          faults.addAll(laid(read, layout, () -> SecondFaces.of(read.slabs().getFirst())));
        }
      }
    }
    return faults;
  }

  /**
   * What is wrong with the verdicts on what holds a slab and on its joints. Its panels are looked
   * at in {@link #given}: joints as wrong as these are drawn to what they nearly reach.
   */
  List<String> held(Plan plan) {
    if (!(PlanReader.read(PlanWriter.bytes(plan))
        instanceof PlanReading.ReadPlan(Plan read, _, _))) {
      tally.refused();
      return List.of();
    }
    Layout layout = Layouts.of(read);
    SlabLayout laid = layout.slabs().getFirst();
    Judgement judgement = Checks.judge(read, layout);
    List<String> faults = new ArrayList<>();
    judgement.crashed().forEach(c -> faults.add(c.rule() + " crashed: " + c.fault()));
    tally.judged(laid.panels().size(), judgement.findings().size());
    Map<Subject, Verdict> joints = new LinkedHashMap<>();
    new SecondAnchors(read, laid.slab())
        .verdicts()
        .forEach((id, v) -> joints.put(new Subject.OnJoint(id), v));
    compare("M6", joints, judgement, faults);
    compare("M7", new SecondHold(read, laid.slab()).verdicts(), judgement, faults);
    return faults;
  }

  private void compare(
      String rule, Map<Subject, Verdict> verdicts, Judgement judgement, List<String> faults) {
    Map<Subject, Finding> said = new HashMap<>();
    judgement.of(Severity.MUST).stream()
        .filter(f -> f.rule().equals(rule))
        .forEach(f -> said.put(f.subject(), f));
    verdicts.forEach(
        (subject, verdict) -> {
          tally.compared(rule, verdict);
          Finding found = said.get(subject);
          if (verdict != Verdict.UNSURE && (verdict == Verdict.BROKEN) != (found != null)) {
            String key = found == null ? "nothing" : found.key() + " " + found.arguments();
            faults.add(rule + " " + subject + ": geometry says " + verdict + ", the rule " + key);
          }
        });
  }

  /** As {@link #given}, of what the engine lays; nothing of a plan that is refused. */
  List<String> laid(Plan plan) {
    if (PlanReader.read(PlanWriter.bytes(plan)) instanceof PlanReading.ReadPlan read) {
      Layout layout = LayoutEngine.first(read.plan());
      return laid(read.plan(), layout, () -> SecondFaces.asCut(layout.slabs().getFirst()));
    }
    return List.of();
  }

  private List<String> laid(Plan asked, Layout layout, Supplier<SecondFaces> faces) {
    SlabLayout slab = layout.slabs().getFirst();
    List<String> faults = new ArrayList<>(Tiling.faults(slab));
    Judgement judgement = Checks.judge(asked, layout);
    judgement.crashed().forEach(c -> faults.add(c.rule() + " crashed: " + c.fault()));
    tally.judged(slab.panels().size(), judgement.findings().size());
    try {
      SecondFaces second = faces.get();
      SecondOpinion opinion = new SecondOpinion(slab.slab(), second);
      for (Polygon p : second.panels()) {
        compare(slab, p, opinion.on(p), judgement, faults);
      }
      compareTees(SecondTees.count(slab.slab(), second), judgement, faults);
    } catch (AssertionFailedException e) {
      // A point inside a face as thin as a hair is more than JTS can find.
      tally.gaveUp();
    }
    return faults;
  }

  private void compare(
      SlabLayout slab,
      Polygon theirs,
      Map<String, Verdict> verdicts,
      Judgement judgement,
      List<String> faults) {
    org.locationtech.jts.geom.Point inside = theirs.getInteriorPoint();
    Point at = new Point(inside.getX(), inside.getY());
    List<Panel> ours = slab.panels().stream().filter(p -> p.region().contains(at)).toList();
    if (ours.size() != 1
        || Math.abs(ours.getFirst().area() - theirs.getArea()) > sameArea(theirs)) {
      faults.add(
          String.format(
              Locale.ROOT,
              "another panel of %.2f sq in at %.3f, %.3f",
              theirs.getArea(),
              at.x(),
              at.y()));
      return;
    }
    String id = ours.getFirst().id();
    Set<String> said =
        judgement.of(Severity.MUST).stream()
            .filter(f -> f.panel().filter(id::equals).isPresent())
            .map(Finding::rule)
            .collect(Collectors.toSet());
    verdicts.forEach(
        (rule, verdict) -> {
          tally.compared(rule, verdict);
          if (verdict != Verdict.UNSURE && (verdict == Verdict.BROKEN) != said.contains(rule)) {
            faults.add(
                String.format(
                    Locale.ROOT,
                    "%s at %s (%.3f, %.3f): geometry says %s",
                    rule,
                    id,
                    at.x(),
                    at.y(),
                    verdict));
          }
        });
  }

  /** How much larger the one may be than the other: chords cut off what an arc holds. */
  private static double sameArea(Polygon p) {
    return SAME_AREA + 1e-3 * p.getLength();
  }

  private void compareTees(OptionalInt second, Judgement judgement, List<String> faults) {
    List<Point> said =
        judgement.findings().stream()
            .filter(f -> f.rule().equals("S1") && f.measured() == 1)
            .map(Finding::at)
            .toList();
    tally.compared("S1", second.isEmpty() ? Verdict.UNSURE : Verdict.KEPT);
    if (second.isPresent() && second.getAsInt() != said.size()) {
      faults.add("S1: tees at " + said + ", geometry says " + second.getAsInt());
    }
  }
}
