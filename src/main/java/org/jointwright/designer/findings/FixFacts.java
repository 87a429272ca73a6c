package org.jointwright.designer.findings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Offer;
import org.jointwright.fix.Fix;
import org.jointwright.fix.IfLeft;
import org.jointwright.fix.name.Called;
import org.jointwright.plan.Plan;
import org.jointwright.text.Words;

/**
 * What can be done about the finding that was gone to, as the list shows it.
 *
 * @param finding the finding's number
 * @param known whether it was looked for
 * @param texts what each fix does, in plain words; empty where none is known
 * @param left what comes of it if it stays; empty where there are fixes
 * @param steps what to go on with; empty where there are fixes
 */
public record FixFacts(
    int finding, boolean known, List<String> texts, Optional<String> left, List<String> steps) {
  /** Copies the lists. */
  public FixFacts {
    texts = List.copyOf(texts);
    steps = List.copyOf(steps);
  }

  /** The fixes to show; empty where no finding was gone to. */
  public static Optional<FixFacts> of(Desk desk, Words words) {
    OptionalInt number = desk.sight().finding();
    if (number.isEmpty()) {
      return Optional.empty();
    }
    int finding = number.getAsInt();
    Optional<Offer> offer = desk.laying().offerFor(finding);
    List<Fix> fixes = offer.map(Offer::fixes).orElse(List.of());
    Optional<Finding> stays =
        offer.filter(o -> o.fixes().isEmpty()).flatMap(o -> finding(desk, finding));
    return Optional.of(
        new FixFacts(
            finding,
            offer.isPresent(),
            fixes.stream().map(f -> said(f, desk.plan(), words)).toList(),
            stays.flatMap(f -> IfLeft.of(f).map(i -> said(i, f, words))),
            stays.isEmpty()
                ? List.of()
                : steps(desk, finding, words).stream().map(NextSteps.NextStep::text).toList()));
  }

  /**
   * What stands under a finding until it is gone to: a question, and that nothing small mends it
   * where that was looked for.
   */
  public static String asking(Desk desk, int finding, Words words) {
    boolean isInVain = desk.laying().offerFor(finding).filter(o -> o.fixes().isEmpty()).isPresent();
    if (!isInVain) {
      return words.say("window.finding.what");
    }
    return words.say(
        steps(desk, finding, words).isEmpty() ? "window.finding.left" : "window.finding.else");
  }

  private static Optional<Finding> finding(Desk desk, int number) {
    return desk.laying()
        .laid()
        .map(Laid::findings)
        .filter(f -> number <= f.size())
        .map(f -> f.get(number - 1));
  }

  private static String said(Fix fix, Plan plan, Words words) {
    String does = words.say(fix.key(), Called.in(plan).in(fix.arguments()));
    return fix.brings().isEmpty()
        ? does
        : words.say(
            "window.fix.brings",
            does,
            fix.brings().stream()
                .map(r -> words.say(Check.nameKey(r)))
                .collect(Collectors.joining(", ")));
  }

  /** What comes of it, with its source where that does not stand above it already. */
  private static String said(IfLeft left, Finding finding, Words words) {
    String comes = words.say(left.key());
    return finding.sources().contains(left.source())
        ? comes
        : words.say("window.fix.left", comes, Finding.said(left.source(), words::say));
  }

  private static List<NextSteps.NextStep> steps(Desk desk, int finding, Words words) {
    return finding(desk, finding)
        .map(f -> new NextSteps(desk, desk.laying().laid().orElseThrow(), f, words).all())
        .orElse(List.of());
  }

  /** The desk with a fix done; as it was where the fix is of a plan that has changed since. */
  public static Desk done(Desk desk, int finding, int index) {
    return desk.laying()
        .offerFor(finding)
        .filter(o -> index < o.fixes().size())
        .map(o -> o.fixes().get(index))
        .map(f -> f.isOfShape() ? desk.edited(f.edit()) : desk.editedOnly(f.edit()))
        .orElse(desk);
  }

  /** The desk gone on with what a finding without fixes leaves to do. */
  public static Desk goneOn(Desk desk, int finding, int index, Words words) {
    List<NextSteps.NextStep> steps =
        desk.laying().offerFor(finding).isEmpty() ? List.of() : steps(desk, finding, words);
    return index < steps.size() ? steps.get(index).taken().apply(desk) : desk;
  }
}
