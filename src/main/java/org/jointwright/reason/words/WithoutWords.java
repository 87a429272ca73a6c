package org.jointwright.reason.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.figure.SlabFigures;
import org.jointwright.measure.Length;
import org.jointwright.plan.LetteredCorner;
import org.jointwright.reason.Origin;
import org.jointwright.reason.Outcome;
import org.jointwright.reason.Without;
import org.jointwright.text.Words;

/**
 * Says what would be without joints. Panels have no names then, so the sentences speak of "a panel
 * here" with the same figures as the finding.
 *
 * @param origins what the joint takes its place from
 * @param start the key of what the sentences begin with
 */
record WithoutWords(Words words, LineNames lines, List<Origin> origins, String start) {
  /** A corner of the plan this near to a finding is its corner, inches. */
  private static final double AT_CORNER = 1;

  /** Growth in length that is worth a word, inches. */
  private static final double LONGER = 1;

  /** Growth of the spread of areas that is worth a word. */
  private static final double UNEVENER = 0.01;

  List<String> say(Without without) {
    List<String> said = new ArrayList<>();
    if (!without.breaks().isEmpty()) {
      said.add(say(without.breaks().getFirst()));
      List<String> others =
          without.breaks().stream()
              .map(Finding::rule)
              .distinct()
              .filter(r -> !r.equals(without.breaks().getFirst().rule()))
              .map(r -> words.say(Check.nameKey(r)))
              .toList();
      if (!others.isEmpty()) {
        said.add(words.say("reason.also", String.join(", ", others)));
      }
      return said;
    }
    said.add(words.say("reason.nothing", begin()));
    worse(without).ifPresent(said::add);
    return said;
  }

  private String begin() {
    return words.say(start);
  }

  /** What one finding says when it is only thought of. */
  String say(Finding f) {
    return switch (f.key()) {
      case "check.m1.tooLong" -> words.say("reason.breaks.tooLong", begin(), length(f), limit(f));
      case "check.m2.tooThin" ->
          words.say("reason.breaks.tooThin", begin(), f.measured(), f.limit());
      case "check.m3.corner" -> corner(f);
      case "check.m3.whereJointsMeet" ->
          words.say("reason.breaks.whereJointsMeet", begin(), f.measured(), f.limit());
      case "check.m3.curve" -> words.say("reason.breaks.curve", begin(), f.measured(), f.limit());
      case "check.m4.tooSharp" ->
          words.say("reason.breaks.sharp", begin(), f.measured(), f.limit());
      case "check.m5.tooNarrow" -> words.say("reason.breaks.narrow", begin(), length(f), limit(f));
      case "check.m6.loose" -> words.say("reason.breaks.loose", begin(), joint(f));
      case "check.m7.bareBuilding", "check.m7.bareConcrete", "check.m7.bareStreet" ->
          words.say("reason.breaks.bareEdge", begin(), length(f));
      case "check.m7.bareBoxOut", "check.m7.noBoxOut" ->
          words.say(
              "reason.breaks.bareBoxOut", begin(), lines.object((String) f.arguments().getFirst()));
      case "check.m8.hole" -> words.say("reason.breaks.hole", begin());
      case "check.m8.hollow" -> words.say("reason.breaks.hollow", begin(), f.measured(), f.limit());
      default -> words.say("reason.breaks.other", begin(), words.say(f.nameKey()));
    };
  }

  private static Length length(Finding f) {
    return Length.inches(f.measured());
  }

  private static Length limit(Finding f) {
    return Length.inches(f.limit());
  }

  private String corner(Finding f) {
    Optional<String> letter =
        lines.lettering().corners().stream()
            .filter(c -> c.at().distance(f.at()) <= AT_CORNER)
            .findFirst()
            .map(LetteredCorner::letter);
    if (letter.isPresent()) {
      return words.say("reason.breaks.corner", begin(), letter.get(), f.measured(), f.limit());
    }
    for (Origin o : origins) {
      if (o instanceof Origin.BoxOutCorner b && b.at().distance(f.at()) <= AT_CORNER) {
        return words.say(
            "reason.breaks.boxOutCorner",
            begin(),
            lines.object(b.fixed()),
            f.measured(),
            f.limit());
      }
    }
    return words.say("reason.breaks.someCorner", begin(), f.measured(), f.limit());
  }

  private String joint(Finding f) {
    return f.joint().map(j -> lines.joints().of(lines.slab(), j)).orElse("");
  }

  /** What gets worse where nothing breaks: the figure that a finisher would name first. */
  private Optional<String> worse(Without w) {
    SlabFigures before = w.before().figures();
    SlabFigures after = w.after().figures();
    if (isLonger(w.before(), w.after())) {
      return Optional.of(
          words.say(
              "reason.worse.longer",
              Length.inches(w.after().longest()),
              Length.inches(w.before().longest()),
              Length.inches(w.after().most())));
    }
    if (after.tees() > before.tees()) {
      return Optional.of(words.say("reason.worse.tees", after.tees() - before.tees()));
    }
    if (after.missed() > before.missed()) {
      return Optional.of(words.say("reason.worse.missed", after.missed() - before.missed()));
    }
    if (after.cv() > before.cv() + UNEVENER) {
      return Optional.of(words.say("reason.worse.uneven", before.cv(), after.cv()));
    }
    return after.meanAspect() > before.meanAspect() + UNEVENER
        ? Optional.of(words.say("reason.worse.thinner", before.meanAspect(), after.meanAspect()))
        : Optional.empty();
  }

  private static boolean isLonger(Outcome before, Outcome after) {
    return after.longest() > before.longest() + LONGER;
  }
}
