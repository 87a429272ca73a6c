package org.jointwright.app;

import java.util.function.BooleanSupplier;
import org.jointwright.check.Severity;
import org.jointwright.check.figure.Figures;
import org.jointwright.check.figure.SlabFigures;
import org.jointwright.joint.SlabLayout;
import org.jointwright.layout.exact.HowNear;
import org.jointwright.layout.exact.Nearness;
import org.jointwright.text.Words;

/** Says how near a slab's layout is known to be to the cheapest. */
public final class NearestKnown {
  private NearestKnown() {}

  /**
   * A sentence: nothing costs less, at most so much could be gained, or why nothing is proved.
   * Takes from a moment to a minute.
   *
   * @param slab the slab's id, one of the plan's
   * @param goOn asked now and then; once it says no, what is known by then is said
   */
  public static String say(Answer answer, String slab, Words words, BooleanSupplier goOn) {
    SlabLayout laid = answer.layout().slab(slab).orElseThrow();
    double cost =
        Figures.of(answer.layout()).slabs().stream()
            .filter(f -> f.slab().equals(slab))
            .mapToDouble(SlabFigures::cost)
            .sum();
    boolean clean =
        answer.judgement().of(Severity.MUST).stream().noneMatch(f -> f.slab().equals(slab));
    return say(HowNear.of(answer.plan(), laid, cost, clean, goOn), words);
  }

  private static String say(Nearness near, Words words) {
    return switch (near) {
      case Nearness.Least least -> words.say("near.least");
      case Nearness.AtMost(double share, double known) when known > 0 ->
          words.say("near.atMostKnown", 100 * share, 100 * known);
      case Nearness.AtMost(double share, double known) -> words.say("near.atMost", 100 * share);
      case Nearness.NoneMeets none -> words.say("near.noneMeets");
      case Nearness.Unproved(Nearness.Why why) -> words.say("near.unproved", why(why, words));
    };
  }

  private static String why(Nearness.Why why, Words words) {
    return switch (why) {
      case ARCS -> words.say("near.why.arcs");
      case SLANTED -> words.say("near.why.slanted");
      case JOGS -> words.say("near.why.jogs");
      case FIXED -> words.say("near.why.fixed");
      case BROKEN -> words.say("near.why.broken");
      case OTHER_JOINTS -> words.say("near.why.otherJoints");
      case HELD -> words.say("near.why.held");
      case MANY -> words.say("near.why.many");
      case TRIES -> words.say("near.why.tries");
    };
  }
}
