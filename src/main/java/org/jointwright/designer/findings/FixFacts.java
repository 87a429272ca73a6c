package org.jointwright.designer.findings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Offer;
import org.jointwright.fix.Fix;
import org.jointwright.fix.name.Called;
import org.jointwright.plan.Plan;
import org.jointwright.text.Words;

/**
 * What can be done about the finding that was gone to, as the list shows it.
 *
 * @param finding the finding's number
 * @param known whether it was looked for
 * @param texts what each fix does, in plain words; empty where none is known
 */
public record FixFacts(int finding, boolean known, List<String> texts) {
  /** Copies the list. */
  public FixFacts {
    texts = List.copyOf(texts);
  }

  /** The fixes to show; empty where no finding was gone to. */
  public static Optional<FixFacts> of(Desk desk, Words words) {
    OptionalInt number = desk.sight().finding();
    if (number.isEmpty()) {
      return Optional.empty();
    }
    Optional<Offer> offer = desk.laying().offerFor(number.getAsInt());
    List<Fix> fixes = offer.map(Offer::fixes).orElse(List.of());
    return Optional.of(
        new FixFacts(
            number.getAsInt(),
            offer.isPresent(),
            fixes.stream().map(f -> said(f, desk.plan(), words)).toList()));
  }

  private static String said(Fix fix, Plan plan, Words words) {
    return words.say(fix.key(), Called.in(plan).in(fix.arguments()));
  }

  /** The desk with a fix done; as it was where the fix is of a plan that has changed since. */
  public static Desk done(Desk desk, int finding, int index) {
    return desk.laying()
        .offerFor(finding)
        .filter(o -> index < o.fixes().size())
        .map(o -> desk.editedOnly(o.fixes().get(index).edit()))
        .orElse(desk);
  }
}
