package org.jointwright.designer.facts;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.check.Severity;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Papers;
import org.jointwright.designer.state.Step;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.text.Words;

/**
 * A step of the job as the path shows it.
 *
 * @param step which one
 * @param done how far it is done
 * @param word its name
 * @param fact one fact
 * @param musts how many findings must be mended
 * @param shoulds how many should be
 * @param notes how many are worth knowing
 */
public record StepFacts(
    Step step, Done done, String word, String fact, int musts, int shoulds, int notes) {
  /** How far a step is done. */
  public enum Done {
    /** Not begun. */
    OPEN,
    /** Begun. */
    BEGUN,
    /** Done. */
    DONE
  }

  /** Every step. */
  public static List<StepFacts> all(Desk desk, Words words) {
    Plan plan = desk.plan();
    boolean hasSlabs = !plan.slabs().isEmpty();
    boolean isLaid = plan.isLaid();
    boolean isBroken = count(desk, Severity.MUST) > 0;
    return List.of(
        plain(
            Step.OUTLINE,
            hasSlabs ? Done.DONE : desk.draft().isPresent() ? Done.BEGUN : Done.OPEN,
            words.say("window.step.outline"),
            hasSlabs
                ? words.say(
                    "window.step.outlineFact",
                    plan.slabs().size(),
                    Lettering.of(plan).corners().size())
                : words.say(
                    desk.draft().isPresent() ? "window.step.drawing" : "window.step.notBegun")),
        plain(
            Step.SECTION,
            hasSlabs ? lookedAt(desk, Step.SECTION) : Done.OPEN,
            words.say("window.step.section"),
            hasSlabs ? section(plan, words) : words.say("window.step.notBegun")),
        new StepFacts(
            Step.JOINTS,
            isLaid ? (isBroken ? Done.BEGUN : Done.DONE) : Done.OPEN,
            words.say("window.step.joints"),
            isLaid ? toCut(plan, words) : words.say("window.step.notBegun"),
            count(desk, Severity.MUST),
            count(desk, Severity.SHOULD),
            count(desk, Severity.NOTE)),
        plain(
            Step.ORDER,
            isLaid ? lookedAt(desk, Step.ORDER) : Done.OPEN,
            words.say("window.step.order"),
            words.say(isLaid ? "window.step.orderFact" : "window.step.notBegun")),
        sheets(desk, isLaid, words));
  }

  /** What is filled in by itself is done once somebody has looked at it. */
  private static Done lookedAt(Desk desk, Step step) {
    return desk.sight().seen().contains(step) ? Done.DONE : Done.BEGUN;
  }

  /** Done once they are written, until the plan changes. */
  private static StepFacts sheets(Desk desk, boolean isLaid, Words words) {
    Optional<Papers.Sheets> written = desk.papers().sheets().filter(s -> isLaid);
    boolean isNow = written.filter(s -> s.plan().equals(desk.plan())).isPresent();
    String fact =
        isNow
            ? "window.step.sheetsWritten"
            : written.isPresent()
                ? "window.step.sheetsOld"
                : isLaid ? "window.step.sheetsReady" : "window.step.notBegun";
    Done done = isNow ? Done.DONE : written.isPresent() ? Done.BEGUN : Done.OPEN;
    return plain(Step.SHEETS, done, words.say("window.step.sheets"), words.say(fact));
  }

  private static StepFacts plain(Step step, Done done, String word, String fact) {
    return new StepFacts(step, done, word, fact, 0, 0, 0);
  }

  private static int count(Desk desk, Severity severity) {
    return desk.laying().laid().map(Laid::judgement).map(j -> j.of(severity).size()).orElse(0);
  }

  /** How thick the slabs are; from the thinnest to the thickest, since names would not fit. */
  private static String section(Plan plan, Words words) {
    List<Length> all =
        plan.slabs().stream()
            .map(Slab::thickness)
            .sorted(Comparator.comparingDouble(Length::inches))
            .toList();
    String least = words.print(all.getFirst());
    String most = words.print(all.getLast());
    return least.equals(most) ? least : words.say("window.step.sectionFact", least, most);
  }

  /** How much there is to cut, to whole feet or metres. */
  public static String toCut(Plan plan, Words words) {
    double inches = 0;
    for (Slab s : plan.slabs()) {
      for (Joint j : s.joints()) {
        inches += j.kind() == JointKind.CONTRACTION ? j.path().length() : 0;
      }
    }
    boolean metric = words.units() == UnitSystem.METRIC;
    Length length = Length.inches(inches);
    long figure = Math.round(length.in(metric ? LengthUnit.METRE : LengthUnit.FOOT));
    return words.say(metric ? "window.step.toCutMetres" : "window.step.toCutFeet", figure);
  }
}
