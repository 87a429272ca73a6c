package org.jointwright.app;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jointwright.check.Severity;
import org.jointwright.check.figure.Figures;
import org.jointwright.check.figure.SlabFigures;
import org.jointwright.check.judge.Checks;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.layout.Offer;
import org.jointwright.measure.Length;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.shape.Edge;
import org.jointwright.text.Words;

/**
 * One of several layouts of a slab.
 *
 * @param preference what it is best at
 * @param answer the plan so laid, and what the rules say of it
 * @param figures the slab's figures in it
 */
public record LayoutChoice(Preference preference, Answer answer, SlabFigures figures) {
  private static final double HAIR = 1e-3;

  /** Costs nearer than this are the same, ft. */
  private static final double FOOT = 1;

  /** Mean aspects nearer than this are the same: no eye tells them apart. */
  private static final double ASPECT = 0.05;

  /** All the layouts of a slab worth choosing among. */
  public static List<LayoutChoice> of(Plan plan, String slab) {
    return of(plan, slab, () -> true);
  }

  /**
   * The layouts of a slab worth choosing among, the shortest first, three at most.
   *
   * @param slab the slab's id, one of the plan's
   * @param goOn asked now and then; once it says no, there are those found by then
   */
  public static List<LayoutChoice> of(Plan plan, String slab, BooleanSupplier goOn) {
    List<LayoutChoice> found = new ArrayList<>();
    for (Offer offer : LayoutEngine.choices(plan, slab, goOn)) {
      Answer answer = new Answer(plan, offer.layout(), Checks.judge(plan, offer.layout()));
      SlabFigures figures =
          Figures.of(offer.layout()).slabs().stream()
              .filter(f -> f.slab().equals(slab))
              .findFirst()
              .orElseThrow();
      LayoutChoice choice = new LayoutChoice(offer.preference(), answer, figures);
      if (found.isEmpty() || choice.broken() <= found.getFirst().broken()) {
        found.add(choice);
      }
    }
    return found.stream().filter(c -> found.stream().noneMatch(c::isWorseThan)).toList();
  }

  /**
   * Whether another is no worse in anything that is shown of the two and better in something. What
   * lines up with a side is offered for that alone.
   */
  private boolean isWorseThan(LayoutChoice other) {
    boolean noWorse =
        other.figures.cost() <= figures.cost() + HAIR
            && other.figures.meanAspect() <= figures.meanAspect() + HAIR
            && other.figures.cv() <= figures.cv() + HAIR
            && other.advice() <= advice();
    boolean better =
        other.figures.cost() < figures.cost() - FOOT
            || other.figures.meanAspect() < figures.meanAspect() - ASPECT;
    return noWorse && better && !(preference instanceof Preference.LinedUpWith);
  }

  private long advice() {
    return answer.judgement().of(Severity.SHOULD).size();
  }

  /** What it is best at, in words; a side by the letters of its corners. */
  public String name(Words words) {
    return switch (preference) {
      case Preference.Overall.SHORTEST -> words.say("near.choice.shortest");
      case Preference.Overall.SQUAREST -> words.say("near.choice.squarest");
      case Preference.LinedUpWith lined -> words.say("near.choice.linedUp", side());
    };
  }

  /** The side that it is in line with, by the letters of its corners; empty for the others. */
  public String side() {
    return preference instanceof Preference.LinedUpWith lined
        ? Sides.letters(answer.plan(), edge(lined))
        : "";
  }

  private Edge edge(Preference.LinedUpWith lined) {
    Plan plan = answer.plan();
    return plan.slab(figures.slab()).orElseThrow().outline().ring().edges().get(lined.edge());
  }

  /** Its figures in words: feet to cut, panels, how square they are, tees. */
  public String figuresSaid(Words words) {
    return words.say(
        "near.choice.figures",
        Length.feet(figures.feet()),
        figures.panels(),
        figures.meanAspect(),
        figures.tees());
  }

  private int broken() {
    return answer.judgement().of(Severity.MUST).size();
  }
}
