package org.jointwright.designer.state;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.jointwright.app.work.Work;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.plan.Plan;
import org.jointwright.plan.edit.BringBack;

/** What of a desk is kept safe, and a desk with it back. */
public final class WorkOnDesk {
  private WorkOnDesk() {}

  /** The work that would be lost with the desk; empty where all of it stands in the file. */
  public static Optional<Work> of(Desk desk) {
    Optional<Work.HalfDrawn> half = halfDrawn(desk);
    return desk.papers().isKept() && half.isEmpty()
        ? Optional.empty()
        : Optional.of(new Work(desk.plan(), desk.papers().file(), half));
  }

  /** A corner or a word of it is work; where the pencil points is not. */
  private static Optional<Work.HalfDrawn> halfDrawn(Desk desk) {
    return desk.draft()
        .filter(d -> !d.placed().isEmpty() || !d.typed().isEmpty())
        .map(d -> new Work.HalfDrawn(d.what().name(), d.placed(), d.typed(), d.wide()));
  }

  /**
   * The desk with work back on it, not saved. Undoing takes it to what the file holds.
   *
   * @param inFile the plan that the work's file holds now; empty where it has none, or none that
   *     can be read
   */
  public static Desk back(Work work, Optional<Plan> inFile) {
    Desk before =
        work.file()
            .map(f -> inFile.map(p -> Desk.opened(p, f)).orElseGet(() -> inNoFile(f)))
            .orElseGet(Desk::blank);
    BringBack edit = new BringBack(work.plan());
    Desk edited = work.plan().isLaid() ? before.editedOnly(edit) : before.edited(edit);
    // What was looked at before is not known; asking for it again would be worse.
    Desk back = edited.withSight(Sight::havingSeenAll);
    Optional<Draft> draft = work.halfDrawn().flatMap(WorkOnDesk::draft);
    return draft
        .map(d -> back.withStep(Step.OUTLINE).withHand(InHand.drawing(d)))
        .orElseGet(() -> back.withStep(work.plan().isLaid() ? Step.JOINTS : Step.OUTLINE));
  }

  /** Blank paper that goes into {@code file}, which is not there any more. */
  private static Desk inNoFile(Path file) {
    Desk blank = Desk.blank();
    Papers papers = new Papers(blank.history(), Optional.of(file), Optional.empty());
    return new Desk(papers, blank.sight(), blank.hand(), blank.laying(), blank.notice());
  }

  private static Optional<Draft> draft(Work.HalfDrawn half) {
    return Arrays.stream(Drawn.values())
        .filter(w -> w.name().equals(half.what()))
        .findFirst()
        .map(w -> new Draft(w, half.corners(), Optional.empty(), half.typed(), half.wide()));
  }
}
