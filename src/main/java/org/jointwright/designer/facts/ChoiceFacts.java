package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.app.LayoutChoice;
import org.jointwright.designer.findings.FindingFacts;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Enquiry;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Step;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.plan.edit.Named;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.Together;
import org.jointwright.text.Words;

/**
 * The layouts of the slab that is picked, to choose among.
 *
 * @param slab the slab's id
 * @param isAsked whether they were asked for
 * @param choices the layouts; empty until they are worked out
 */
public record ChoiceFacts(String slab, boolean isAsked, Optional<List<One>> choices) {
  /** A joint within this distance of another all along is the same one; inches. */
  private static final double SAME = 1;

  /**
   * One of the layouts.
   *
   * @param name what it is best at
   * @param figures its figures, in words
   * @param layout the whole plan so laid
   * @param isInForce whether the slab is so laid
   */
  public record One(String name, String figures, Layout layout, boolean isInForce) {}

  /** What is offered; empty where no slab is picked, or where it has no joints yet. */
  public static Optional<ChoiceFacts> of(Desk desk, Words words) {
    if (!(desk.picked() instanceof Pick.WholeSlab pick)
        || desk.draft().isPresent()
        || desk.hand().waiting().isPresent()
        || desk.sight().step() == Step.SHEETS
        || desk.sight().step() == Step.ORDER
        || desk.laying().laid().flatMap(l -> l.layout().slab(pick.slab())).isEmpty()) {
      return Optional.empty();
    }
    Optional<Enquiry<List<LayoutChoice>>> asked = desk.laying().choicesOf(pick.slab());
    return Optional.of(
        new ChoiceFacts(
            pick.slab(),
            asked.isPresent(),
            asked
                .flatMap(Enquiry::answer)
                .map(all -> all.stream().map(c -> one(c, pick.slab(), desk, words)).toList())));
  }

  private static One one(LayoutChoice choice, String slab, Desk desk, Words words) {
    return new One(
        choice.name(words),
        words.say(
            "window.layouts.figures",
            choice.figuresSaid(words),
            FindingFacts.summary(choice.answer().judgement(), words)),
        choice.answer().layout(),
        isSame(cut(choice.answer().plan(), slab), cut(desk.plan(), slab)));
  }

  /** Whether there is nothing else to choose than what is laid. */
  public boolean isOnlyOne() {
    return choices.filter(c -> c.size() == 1 && c.getFirst().isInForce()).isPresent();
  }

  /** The desk asking for the layouts, or with them put away. */
  public Desk turned(Desk desk) {
    return isAsked ? desk.notChoosing() : desk.choosing(slab);
  }

  /** The desk with one of the layouts taken; as it was where the plan has changed since. */
  public static Desk taken(Desk desk, String slab, int index) {
    return desk.laying()
        .choicesOf(slab)
        .flatMap(Enquiry::answer)
        .filter(all -> index < all.size())
        .map(all -> desk.taking(edit(all.get(index), slab)))
        .orElse(desk);
  }

  /** The slabs beside it are laid with it, since their joints meet. */
  private static Edit edit(LayoutChoice choice, String slab) {
    List<Edit> edits = new ArrayList<>();
    edits.add(new SlabEdit.SetPreference(slab, choice.preference()));
    for (Slab s : choice.answer().plan().slabs()) {
      edits.add(new JointEdit.Lay(s.id(), s.joints(), s.boxOuts()));
    }
    return new Named("window.did.preference", List.of(slab), new Together(edits));
  }

  private static List<Joint> cut(Plan plan, String slab) {
    return plan.slab(slab).stream()
        .flatMap(s -> s.joints().stream())
        .filter(j -> j.kind() != JointKind.ISOLATION)
        .toList();
  }

  private static boolean isSame(List<Joint> some, List<Joint> others) {
    return some.size() == others.size()
        && some.stream().allMatch(j -> others.stream().anyMatch(k -> isSame(j, k)));
  }

  private static boolean isSame(Joint a, Joint b) {
    return a.kind() == b.kind()
        && a.path().distance(b.path().start()) <= SAME
        && a.path().distance(b.path().end()) <= SAME
        && b.path().distance(a.path().start()) <= SAME
        && b.path().distance(a.path().end()) <= SAME;
  }
}
