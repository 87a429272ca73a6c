package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Plan;

/**
 * The plan as it is, the steps that led to it, and those undone since. Immutable: each call makes a
 * new history.
 *
 * <p>What is saved is remembered as a plan, not as a count of steps: undoing past the saved step
 * and doing something else never looks saved, and coming back to it always does.
 *
 * @param past what can be undone, the latest last
 * @param now the plan as it is
 * @param future what can be done again, the next one last
 * @param saved the plan as it was saved; empty when it never was
 */
public record History(List<Step> past, Plan now, List<Step> future, Optional<Plan> saved) {
  /** Copies the lists. */
  public History {
    past = List.copyOf(past);
    future = List.copyOf(future);
  }

  /**
   * One step.
   *
   * @param before the plan before it
   * @param edit what was done
   * @param after the plan after it
   */
  public record Step(Plan before, Edit edit, Plan after) {}

  /** The history of a plan just begun, which is on no disk. */
  public static History begun(Plan plan) {
    return new History(List.of(), plan, List.of(), Optional.empty());
  }

  /** The history of a plan just read from a file. */
  public static History opened(Plan plan) {
    return new History(List.of(), plan, List.of(), Optional.of(plan));
  }

  /** This history with one step more; an edit that changes nothing is no step. */
  public History done(Edit edit) {
    Plan after = edit.applyTo(now);
    if (after.equals(now)) {
      return this;
    }
    List<Step> steps = new ArrayList<>(past);
    steps.add(new Step(now, edit, after));
    return new History(steps, after, List.of(), saved);
  }

  /**
   * This history with an edit that goes on where the last step left off: merged with it if both
   * agree, else a step of its own. A saved step is never merged into.
   */
  public History continued(Edit edit) {
    if (past.isEmpty() || !future.isEmpty() || isSaved()) {
      return done(edit);
    }
    Step last = past.getLast();
    Optional<Edit> merged = last.edit().mergedWith(edit);
    if (merged.isEmpty()) {
      return done(edit);
    }
    Plan after = merged.get().applyTo(last.before());
    List<Step> steps = new ArrayList<>(past.subList(0, past.size() - 1));
    if (!after.equals(last.before())) {
      steps.add(new Step(last.before(), merged.get(), after));
    }
    return new History(steps, after, List.of(), saved);
  }

  /**
   * This history with the plan replaced by what follows from it, such as joints laid anew, without
   * a step of its own: undoing the last step undoes it too.
   */
  public History following(Plan plan) {
    if (past.isEmpty()) {
      return new History(past, plan, future, saved);
    }
    Step last = past.getLast();
    List<Step> steps = new ArrayList<>(past.subList(0, past.size() - 1));
    steps.add(new Step(last.before(), last.edit(), plan));
    return new History(steps, plan, future, saved);
  }

  /** Whether there is something to undo. */
  public boolean canUndo() {
    return !past.isEmpty();
  }

  /** Whether there is something to do again. */
  public boolean canRedo() {
    return !future.isEmpty();
  }

  /** This history one step back; itself where there is none. */
  public History undone() {
    if (past.isEmpty()) {
      return this;
    }
    Step last = past.getLast();
    List<Step> undone = new ArrayList<>(future);
    undone.add(last);
    return new History(past.subList(0, past.size() - 1), last.before(), undone, saved);
  }

  /** This history one step forward again; itself where there is none. */
  public History redone() {
    if (future.isEmpty()) {
      return this;
    }
    Step next = future.getLast();
    List<Step> steps = new ArrayList<>(past);
    steps.add(next);
    return new History(steps, next.after(), future.subList(0, future.size() - 1), saved);
  }

  /** What undoing would undo. */
  public Optional<Edit> toUndo() {
    return past.isEmpty() ? Optional.empty() : Optional.of(past.getLast().edit());
  }

  /** What redoing would do again. */
  public Optional<Edit> toRedo() {
    return future.isEmpty() ? Optional.empty() : Optional.of(future.getLast().edit());
  }

  /** This history with the plan as it is marked as saved. */
  public History savedNow() {
    return new History(past, now, future, Optional.of(now));
  }

  /** Whether the plan as it is stands on the disk. */
  public boolean isSaved() {
    return saved.isPresent() && saved.get().equals(now);
  }
}
