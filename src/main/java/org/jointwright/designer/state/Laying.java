package org.jointwright.designer.state;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.app.LayoutChoice;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.ByHand;
import org.jointwright.reason.Reason;

/**
 * What is worked out behind the window.
 *
 * @param laid the last answer
 * @param wish the last wish
 * @param offers what can be done about the findings that were gone to, as far as it was looked for
 * @param why why a joint of the last answer is where it is, the last that was asked about
 * @param choices the other layouts of a slab, if they were asked for
 * @param near how near a slab's layout is to the cheapest, in words, if that was asked
 */
public record Laying(
    Optional<Laid> laid,
    Optional<Wish> wish,
    List<Offer> offers,
    Optional<WhyHere> why,
    Optional<Enquiry<List<LayoutChoice>>> choices,
    Optional<Enquiry<String>> near) {
  /** Copies the list. */
  public Laying {
    offers = List.copyOf(offers);
  }

  /** Nothing asked yet. */
  public static final Laying NONE =
      new Laying(
          Optional.empty(),
          Optional.empty(),
          List.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /** A new wish; what was laid stays in sight meanwhile. */
  public Laying wishing(Plan plan, boolean lay) {
    return wishing(plan, lay, ByHand.NONE);
  }

  /** The same, but what a hand has laid stays. */
  Laying wishing(Plan plan, boolean lay, ByHand hand) {
    return wishing(plan, plan, lay, hand);
  }

  /**
   * The same.
   *
   * @param was the plan as it was before the change: what is taken out of it since is taken out of
   *     the pattern that it is fitted to
   */
  Laying wishing(Plan was, Plan plan, boolean lay, ByHand hand) {
    long next = wish.map(w -> w.generation() + 1).orElse(1L);
    long since = since();
    Optional<Layout> before =
        before(since)
            .or(() -> lay ? standing(since) : Optional.empty())
            .filter(l -> asksTheSame(l.plan(), plan));
    ByHand stays =
        isLaying()
            ? wish.map(w -> hand.after(w.hand(), s -> isReshaped(s, before, plan))).orElse(hand)
            : hand;
    Optional<Layout> pattern = before.map(b -> lay ? withoutGone(b, was, plan, stays) : b);
    return wishing(new Wish(next, plan, lay, pattern, since, stays, false));
  }

  /** A layout without the joints that a hand has just taken out of the plan. */
  private static Layout withoutGone(Layout before, Plan was, Plan now, ByHand hand) {
    Layout left = before;
    for (Slab slab : now.slabs()) {
      if (hand.standing().contains(slab.id()) || hand.following().contains(slab.id())) {
        Set<String> gone = was.slab(slab.id()).map(Laying::ids).orElse(Set.of());
        gone.removeAll(ids(slab));
        Optional<Slab> old = left.plan().slab(slab.id());
        if (old.filter(s -> ids(s).containsAll(gone)).isPresent() && !gone.isEmpty()) {
          List<Joint> joints = new ArrayList<>(old.get().joints());
          joints.removeIf(j -> gone.contains(j.id()));
          left = Layouts.with(left, old.get().withLaid(joints, old.get().boxOuts()));
        }
      }
    }
    return left;
  }

  private static Set<String> ids(Slab slab) {
    Set<String> ids = new HashSet<>();
    slab.joints().forEach(j -> ids.add(j.id()));
    return ids;
  }

  /** Whether a slab has another shape than in a layout. */
  private static boolean isReshaped(String slab, Optional<Layout> before, Plan now) {
    Optional<Slab> was = before.flatMap(l -> l.plan().slab(slab));
    Optional<Slab> is = now.slab(slab);
    return was.isPresent()
        && is.isPresent()
        && !(was.get().outline().equals(is.get().outline())
            && was.get().openings().equals(is.get().openings()));
  }

  /** A wish to lay the plan without a look at the pattern that was there. */
  Laying wishingAnew(Plan plan) {
    long next = wish.map(w -> w.generation() + 1).orElse(1L);
    return wishing(new Wish(next, plan, true, Optional.empty(), 0, ByHand.NONE, false));
  }

  /**
   * The wish that the newest pattern answers to which a changed plan can be fitted: the last one
   * where it asked for no joints, since what stands in its plan is a pattern, judged or not.
   */
  private long since() {
    long answered = laid.filter(l -> !l.isFirst()).map(Laid::generation).orElse(0L);
    return wish.map(w -> w.lay() || w.isGivenUp() ? Math.max(w.since(), answered) : w.generation())
        .orElse(answered);
  }

  /** The pattern that answers that wish. */
  private Optional<Layout> before(long since) {
    return laid.filter(l -> !l.isFirst() && l.generation() == since)
        .map(Laid::layout)
        .or(() -> wish.filter(w -> w.since() == since).flatMap(Wish::before));
  }

  /** The joints that stand in the plan of that wish. */
  private Optional<Layout> standing(long since) {
    return wish.filter(w -> w.generation() == since).map(w -> Layouts.of(w.plan()));
  }

  private static boolean asksTheSame(Plan before, Plan now) {
    return before.given().equals(now.given())
        && before.pour().equals(now.pour())
        && now.slabs().stream()
            .allMatch(
                s ->
                    before
                        .slab(s.id())
                        .filter(b -> b.keepClear().equals(s.keepClear()))
                        .filter(b -> b.jointing().equals(s.jointing()))
                        .isPresent());
  }

  private Laying wishing(Wish next) {
    return new Laying(laid, Optional.of(next), List.of(), why, Optional.empty(), Optional.empty());
  }

  /** The same wish numbered after those of another desk, so that no answer to them fits it. */
  Laying after(Laying other) {
    long before = other.wish.map(Wish::generation).orElse(0L);
    return wish.map(
            w ->
                wishing(
                    new Wish(
                        before + 1,
                        w.plan(),
                        w.lay(),
                        w.before(),
                        w.since(),
                        w.hand(),
                        w.isGivenUp())))
        .orElseGet(
            () -> new Laying(laid, wish, List.of(), why, Optional.empty(), Optional.empty()));
  }

  /** With an answer, unless a later or better one is here already. */
  public Laying answered(Laid answer) {
    boolean isOld = laid.filter(answer::isBehind).isPresent();
    return isOld ? this : new Laying(Optional.of(answer), wish, List.of(), why, choices, near);
  }

  /** Without a wish that could not be worked out, if it is the last one. */
  public Laying without(Wish given) {
    boolean isLast = wish.filter(w -> w.generation() == given.generation()).isPresent();
    return isLast
        ? new Laying(laid, Optional.of(given.givenUp()), offers, why, choices, near)
        : this;
  }

  /** Whether the answer in hand is that to the last wish, and no better one follows. */
  public boolean isCurrent() {
    return wish.isEmpty() || wish.get().isGivenUp() || laid.filter(this::asks).isPresent();
  }

  /** Whether the last wish was given up, so that nothing answers it. */
  public boolean isGivenUp() {
    return wish.filter(Wish::isGivenUp).isPresent();
  }

  /** The first answer to the last wish, while the better one is worked out. */
  Optional<Laid> firstOfWish() {
    return laid.filter(Laid::isFirst)
        .filter(l -> wish.filter(w -> w.generation() == l.generation()).isPresent());
  }

  /** Whether joints are being laid: an edit that leaves joints alone must not put that off. */
  boolean isLaying() {
    return !isCurrent() && wish.filter(Wish::lay).isPresent();
  }

  /** Whether {@code answer} is that to the last wish, and no better one follows. */
  public boolean asks(Laid answer) {
    return wish.filter(answer::settles).isPresent();
  }

  /** With an offer, if it is for what was laid last and nothing newer is wished. */
  public Laying offered(Offer value) {
    if (!isOpenTo(value)) {
      return this;
    }
    List<Offer> all = new ArrayList<>(offers);
    all.removeIf(o -> !isOpenTo(o) || o.finding() == value.finding());
    all.add(value);
    return new Laying(laid, wish, all, why, choices, near);
  }

  /** What is offered for the finding of that number; empty while it is not worked out. */
  public Optional<Offer> offerFor(int finding) {
    return offers.stream().filter(o -> o.finding() == finding && isOpenTo(o)).findFirst();
  }

  private boolean isOpenTo(Offer value) {
    return isCurrent() && laid.filter(l -> l.generation() == value.generation()).isPresent();
  }

  /** With the answer to why a joint is where it is. */
  public Laying explained(WhyHere answer) {
    return new Laying(laid, wish, offers, Optional.of(answer), choices, near);
  }

  /** Why a joint is where it is; empty until it is worked out for the layout as it is. */
  public Optional<Reason> whyHere(Pick.AtJoint pick) {
    return laid.filter(l -> isCurrent())
        .flatMap(l -> why.filter(w -> w.answers(l, pick)))
        .flatMap(WhyHere::reason);
  }

  /** The answer to the last wish, of which more may be asked; empty while it is worked out. */
  public Optional<Laid> settled() {
    return laid.filter(this::asks);
  }

  /** Asking for the other layouts of a slab; as it was while joints are being laid. */
  Laying choosing(String slab) {
    return settled()
        .map(l -> new Enquiry<List<LayoutChoice>>(l.generation(), slab, Optional.empty()))
        .map(e -> withChoices(Optional.of(e)))
        .orElse(this);
  }

  /** With the other layouts put away. */
  Laying notChoosing() {
    return withChoices(Optional.empty());
  }

  /** With the layouts there are, if they are still asked for. */
  Laying found(Enquiry<List<LayoutChoice>> answer) {
    return choices.filter(answer::asksAs).isPresent() ? withChoices(Optional.of(answer)) : this;
  }

  /**
   * With the layouts that {@code before} shows: after one of them is taken there are the same to
   * choose among, since what is not locked has no part in them.
   */
  Laying stillChoosing(Laying before) {
    return wish.map(w -> withChoices(before.choices.map(e -> e.about(w.generation()))))
        .orElse(this);
  }

  /** What was asked about the layouts of a slab, unless the plan has changed since. */
  public Optional<Enquiry<List<LayoutChoice>>> choicesOf(String slab) {
    return choices.filter(e -> isOfNow(e, slab));
  }

  private boolean isOfNow(Enquiry<?> e, String slab) {
    return e.slab().equals(slab) && wish.filter(w -> w.generation() == e.generation()).isPresent();
  }

  private Laying withChoices(Optional<Enquiry<List<LayoutChoice>>> value) {
    return new Laying(laid, wish, offers, why, value, near);
  }

  /** Asking how near a slab's layout is to the cheapest; as it was while joints are being laid. */
  Laying measuring(String slab) {
    return settled()
        .map(l -> new Enquiry<String>(l.generation(), slab, Optional.empty()))
        .map(e -> withNear(Optional.of(e)))
        .orElse(this);
  }

  /** With that question put away. */
  Laying notMeasuring() {
    return withNear(Optional.empty());
  }

  /** With its answer, if it is still asked. */
  Laying measured(Enquiry<String> answer) {
    return near.filter(answer::asksAs).isPresent() ? withNear(Optional.of(answer)) : this;
  }

  /** What was asked about how near a slab is, unless the plan has changed since. */
  public Optional<Enquiry<String>> nearOf(String slab) {
    return near.filter(e -> isOfNow(e, slab));
  }

  private Laying withNear(Optional<Enquiry<String>> value) {
    return new Laying(laid, wish, offers, why, choices, value);
  }
}
