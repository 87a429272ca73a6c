package org.jointwright.designer.state;

import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jointwright.app.LayoutChoice;
import org.jointwright.designer.settings.Measures;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.plan.edit.ByHand;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.History;
import org.jointwright.plan.edit.JointEdit;

/**
 * All that is on the desk. Each change makes a new one.
 *
 * @param papers the plan, its history and its file
 * @param sight what the user looks at
 * @param hand what the hand is doing
 * @param laying what is worked out behind the window
 * @param notice what the user is being told
 */
public record Desk(
    Papers papers, Sight sight, InHand hand, Laying laying, Optional<Notice> notice) {
  /** A desk with blank paper. */
  public static Desk blank() {
    return begun(Plan.EMPTY);
  }

  /** A desk with a plan that is on no disk. */
  public static Desk begun(Plan plan) {
    Papers papers = new Papers(History.begun(plan), Optional.empty(), Optional.empty());
    Desk desk = of(papers).asked(!plan.isLaid());
    return plan.isLaid() ? desk.withSight(Sight::havingSeenAll) : desk;
  }

  /** A desk with a plan read from {@code file}. Joints that stand in it are kept. */
  public static Desk opened(Plan plan, Path file) {
    Papers papers = new Papers(History.opened(plan), Optional.of(file), Optional.empty());
    return of(papers).asked(!plan.isLaid()).withSight(Sight::havingSeenAll).withStep(Step.JOINTS);
  }

  private static Desk of(Papers papers) {
    return new Desk(papers, Sight.FIRST, InHand.EMPTY, Laying.NONE, Optional.empty());
  }

  /** The plan as it is. */
  public Plan plan() {
    return papers.history().now();
  }

  /** The plan's history. */
  public History history() {
    return papers.history();
  }

  /** How the plan lies in the window. */
  public Viewport viewport() {
    return sight.viewport();
  }

  /** What is picked. */
  public Pick picked() {
    return sight.picked();
  }

  /** The outline being drawn. */
  public Optional<Draft> draft() {
    return hand.draft();
  }

  /** Whether the outline being drawn has a corner already, which is work that could be lost. */
  public boolean isHalfDrawn() {
    return draft().filter(d -> !d.placed().isEmpty()).isPresent();
  }

  /** Whether all the user did stands on the disk. */
  public boolean isKept() {
    return papers.isKept() && !isHalfDrawn();
  }

  /** A step forward: the edit is done and the joints are laid anew. */
  public Desk edited(Edit edit) {
    return changed(papers.history().done(edit), true);
  }

  /** The edit goes on where the last one left off, as while dragging. */
  public Desk goingOn(Edit edit) {
    return changed(papers.history().continued(edit), true);
  }

  /** A step forward that leaves the other joints as they stand. */
  public Desk editedOnly(Edit edit) {
    return changed(papers.history().done(edit), laying.isLaying());
  }

  /** The edit goes on where the last one left off, and the joints stay as they stand. */
  public Desk goingOnOnly(Edit edit) {
    return changed(papers.history().continued(edit), laying.isLaying());
  }

  /**
   * One step back; what was laid then comes back with it. While an outline is drawn the step is its
   * last side.
   */
  public Desk undone() {
    if (isHalfDrawn()) {
      return draft()
          .flatMap(d -> d.withTyped("").back())
          .map(d -> withHand(InHand.drawing(d)))
          .orElse(this);
    }
    return stepped(papers.history().undone());
  }

  /** One step forward again; while an outline is drawn there is none. */
  public Desk redone() {
    return isHalfDrawn() ? this : stepped(papers.history().redone());
  }

  private Desk stepped(History history) {
    Pick found = Picks.still(history.now(), sight.picked(), plan());
    return changed(history, false).letGo().picking(found);
  }

  private Desk changed(History history, boolean lay) {
    if (history.equals(papers.history())) {
      return this;
    }
    ByHand hand = lay ? ByHand.of(history) : ByHand.NONE;
    Desk desk = withPapers(papers.with(history));
    desk = desk.withLaying(laying.wishing(plan(), hand.alongIn(history), lay, hand));
    return desk.picking(Picks.named(desk.plan(), sight.picked()));
  }

  private Desk asked(boolean lay) {
    return withLaying(laying.wishing(plan(), lay, ByHand.NONE));
  }

  /**
   * With an answer from behind the window. The answer to the last wish becomes part of the step
   * that asked for it; an older one is only shown, while the hand is still moving.
   */
  public Desk answered(Laid answer) {
    if (!laying.asks(answer)) {
      return withLaying(laying.answered(answer));
    }
    History before = papers.history();
    History after = before.following(answer.layout().plan());
    Pick picked = Picks.still(after.now(), sight.picked(), before.now());
    return withPapers(papers.with(after))
        .withLaying(laying.answered(answer))
        .withSight(s -> s.stillAtFinding(picked));
  }

  /** With the answer to why a joint is where it is. */
  public Desk explained(WhyHere answer) {
    return withLaying(laying.explained(answer));
  }

  /** With a wish that could not be worked out given up. */
  public Desk gaveUp(Wish wish) {
    return withLaying(laying.without(wish));
  }

  /**
   * With the laying that is going on stopped. A first answer is taken for good; where there is none
   * yet, joints are as they were.
   */
  public Desk stopped() {
    if (laying.isCurrent()) {
      return this;
    }
    return laying
        .firstOfWish()
        .map(first -> answered(first.forGood()))
        .orElseGet(() -> laying.wish().map(this::gaveUp).orElse(this));
  }

  /** With the joints to be laid once more. */
  public Desk layingAgain() {
    return withLaying(
        laying
            .wish()
            .map(w -> laying.wishing(w.plan(), true, w.hand()))
            .orElseGet(() -> laying.wishing(plan(), true, ByHand.NONE)));
  }

  /** A step forward: the joints of a slab that nobody locked are laid anew, whatever they were. */
  public Desk layingOthers(String slab) {
    return plan()
        .slab(slab)
        .map(s -> new JointEdit.Lay(slab, s.lockedJoints(), s.boxOuts()))
        .map(e -> changed(papers.history().done(e), false))
        .map(d -> d.withLaying(d.laying.wishingAnew(d.plan())))
        .orElse(this);
  }

  /** With what can be done about a finding, unless the desk has gone on since. */
  public Desk offered(Offer offer) {
    return withLaying(laying.offered(offer));
  }

  /** Asking for the other layouts of a slab. */
  public Desk choosing(String slab) {
    return withLaying(laying.choosing(slab));
  }

  /** With the other layouts put away. */
  public Desk notChoosing() {
    return withLaying(laying.notChoosing());
  }

  /** With the layouts there are of a slab, unless the desk has gone on since. */
  public Desk found(Enquiry<List<LayoutChoice>> answer) {
    return withLaying(laying.found(answer));
  }

  /** A step forward by one of the layouts shown, which go on being shown. */
  public Desk taking(Edit edit) {
    Desk taken = editedOnly(edit);
    return taken.withLaying(taken.laying.stillChoosing(laying));
  }

  /** Asking how near a slab's layout is to the cheapest. */
  public Desk measuring(String slab) {
    return withLaying(laying.measuring(slab));
  }

  /** With that question put away. */
  public Desk notMeasuring() {
    return withLaying(laying.notMeasuring());
  }

  /** With its answer, unless the desk has gone on since. */
  public Desk measured(Enquiry<String> answer) {
    return withLaying(laying.measured(answer));
  }

  /** On the same paper as {@code other}: as large, in the same measures, and all of it in sight. */
  public Desk onPaperOf(Desk other) {
    Viewport v = other.viewport();
    return withLaying(laying.after(other.laying()))
        .withSight(s -> s.with(s.viewport().resized(v.width(), v.height()), true))
        .measuredIn(other.sight().measures())
        .fitted();
  }

  /**
   * Shown and read in other measures. A plan that nobody has begun is begun in them too; any other
   * keeps the unit it is written in, and its joints.
   */
  public Desk measuredIn(Measures measures) {
    Desk shown = withSight(s -> s.in(measures));
    LengthUnit unit = measures.bare(Plan.EMPTY.unit());
    // The plan last: to see whether it is blank takes longest.
    boolean stays =
        unit == plan().unit()
            || history().canUndo()
            || history().canRedo()
            || !plan().equals(Plan.EMPTY.in(plan().unit()));
    return stays
        ? shown
        : shown.withPapers(papers.with(History.begun(Plan.EMPTY.in(unit)))).asked(true);
  }

  /** The measures in which lengths are shown. */
  public UnitSystem measures() {
    return sight.measures().of(plan().unit());
  }

  /** The unit of a length that is typed without one. */
  public LengthUnit bare() {
    return sight.measures().bare(plan().unit());
  }

  /** Kept in {@code file}, as {@code saved} was, at {@code time}. */
  public Desk keptIn(Path file, Plan saved, LocalTime time) {
    History h = papers.history();
    History marked = new History(h.past(), h.now(), h.future(), Optional.of(saved));
    return withPapers(
        new Papers(marked, Optional.of(file), Optional.of(time), papers.sheets(), papers.setup()));
  }

  /** With other sheets wanted of the plan. */
  public Desk wanting(Papers.Setup setup) {
    return withPapers(papers.with(setup));
  }

  /** With sheets written of the plan. */
  public Desk printed(Papers.Sheets sheets) {
    return withPapers(
        new Papers(
            papers.history(), papers.file(), papers.kept(), Optional.of(sheets), papers.setup()));
  }

  /** At another step of the job; an outline that is being drawn is put away. */
  public Desk withStep(Step step) {
    Pick pick = Picks.at(step, plan(), picked());
    return putAway()
        .withSight(s -> s.at(step).pointingAt(Pick.NOTHING))
        .withSight(s -> pick.equals(s.picked()) ? s : s.picking(pick));
  }

  /** With something picked. */
  public Desk picking(Pick pick) {
    return withSight(s -> s.picking(pick));
  }

  /**
   * With what is drawn or waits to be set down put away. Where the paper was fitted to hold it too,
   * it is fitted to what is left; where the user has moved it since, it stays.
   */
  public Desk putAway() {
    boolean isRoomTaken = draft().isPresent() || hand.waiting().isPresent();
    Desk without = letGo();
    return isRoomTaken && sight.isFitted() ? without.fitted() : without;
  }

  /** With nothing in the hand. */
  public Desk letGo() {
    return withHand(InHand.EMPTY);
  }

  /** With the whole plan in sight, and kept so until the user moves it. */
  public Desk fitted() {
    return Extent.of(this)
        .map(box -> withSight(s -> s.with(s.viewport().fitted(box), true)))
        .orElseGet(
            () ->
                withSight(
                    s ->
                        s.with(
                            Viewport.BLANK.resized(s.viewport().width(), s.viewport().height()),
                            true)));
  }

  /** With the paper at another size. */
  public Desk resized(double width, double height) {
    Desk sized = withSight(s -> s.with(s.viewport().resized(width, height), s.isFitted()));
    return sight.isFitted() ? sized.fitted() : sized;
  }

  /** Whether only how the plan lies in the window differs, and what is under the pointer. */
  // A part that nothing was done to is the very same; comparing whole plans would be slow.
  @SuppressWarnings("ReferenceEquality")
  public boolean isSameButView(Desk other) {
    return papers == other.papers
        && hand == other.hand
        && laying == other.laying
        && notice.orElse(null) == other.notice.orElse(null)
        && sight.isSameButView(other.sight);
  }

  /** Told something. */
  public Desk told(Notice value) {
    return new Desk(papers, sight, hand, laying, Optional.of(value));
  }

  /** With the notice put away. */
  public Desk untold() {
    return new Desk(papers, sight, hand, laying, Optional.empty());
  }

  /** With something else in the hand. */
  public Desk withHand(InHand value) {
    return new Desk(papers, sight, value, laying, notice);
  }

  /** Looked at otherwise. */
  public Desk withSight(UnaryOperator<Sight> change) {
    return new Desk(papers, change.apply(sight), hand, laying, notice);
  }

  private Desk withPapers(Papers value) {
    return new Desk(value, sight, hand, laying, notice);
  }

  private Desk withLaying(Laying value) {
    return new Desk(papers, sight, hand, value, notice);
  }
}
