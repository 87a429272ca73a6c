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
    return List.copyOf(found);
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
