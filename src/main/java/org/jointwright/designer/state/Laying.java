package org.jointwright.designer.state;

import java.util.Optional;
import org.jointwright.plan.Plan;
import org.jointwright.reason.Reason;

/**
 * What is worked out behind the window.
 *
 * @param laid the last answer
 * @param wish the last wish
 * @param offer what can be done about the finding that was gone to
 * @param why why a joint of the last answer is where it is, the last that was asked about
 */
public record Laying(
    Optional<Laid> laid, Optional<Wish> wish, Optional<Offer> offer, Optional<WhyHere> why) {
  /** Nothing asked yet. */
  public static final Laying NONE =
      new Laying(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** A new wish; what was laid stays in sight meanwhile. */
  public Laying wishing(Plan plan, boolean lay) {
    long next = wish.map(w -> w.generation() + 1).orElse(1L);
    return new Laying(laid, Optional.of(new Wish(next, plan, lay, false)), Optional.empty(), why);
  }

  /** The same wish numbered after those of another desk, so that no answer to them fits it. */
  Laying after(Laying other) {
    long before = other.wish.map(Wish::generation).orElse(0L);
    return new Laying(
        laid,
        wish.map(w -> new Wish(before + 1, w.plan(), w.lay(), w.isGivenUp())),
        Optional.empty(),
        why);
  }

  /** With an answer, unless a later one is here already. */
  public Laying answered(Laid answer) {
    boolean isOld = laid.filter(l -> l.generation() > answer.generation()).isPresent();
    return isOld ? this : new Laying(Optional.of(answer), wish, Optional.empty(), why);
  }

  /** Without a wish that could not be worked out, if it is the last one. */
  public Laying without(Wish given) {
    boolean isLast = wish.filter(w -> w.generation() == given.generation()).isPresent();
    return isLast ? new Laying(laid, Optional.of(given.givenUp()), offer, why) : this;
  }

  /** Whether the answer in hand is that to the last wish. */
  public boolean isCurrent() {
    return wish.isEmpty()
        || wish.get().isGivenUp()
        || laid.filter(l -> l.generation() == wish.get().generation()).isPresent();
  }

  /** Whether {@code answer} is that to the last wish. */
  public boolean asks(Laid answer) {
    return wish.filter(w -> w.generation() == answer.generation()).isPresent();
  }

  /** With an offer, if it is for what was laid last and nothing newer is wished. */
  public Laying offered(Offer value) {
    return isOpenTo(value) ? new Laying(laid, wish, Optional.of(value), why) : this;
  }

  /** What is offered for the finding of that number; empty while it is not worked out. */
  public Optional<Offer> offerFor(int finding) {
    return offer.filter(o -> o.finding() == finding && isOpenTo(o));
  }

  private boolean isOpenTo(Offer value) {
    return isCurrent() && laid.filter(l -> l.generation() == value.generation()).isPresent();
  }

  /** With the answer to why a joint is where it is. */
  public Laying explained(WhyHere answer) {
    return new Laying(laid, wish, offer, Optional.of(answer));
  }

  /** Why a joint is where it is; empty until it is worked out for the layout as it is. */
  public Optional<Reason> whyHere(Pick.AtJoint pick) {
    return laid.filter(l -> isCurrent())
        .flatMap(l -> why.filter(w -> w.answers(l, pick)))
        .flatMap(WhyHere::reason);
  }
}
