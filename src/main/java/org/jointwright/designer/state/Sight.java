package org.jointwright.designer.state;

import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jointwright.designer.settings.Measures;

/**
 * What the user looks at.
 *
 * @param step the step of the job
 * @param viewport how the plan lies in the window
 * @param isFitted whether the whole plan is kept in sight; not after the user moved it
 * @param picked what is picked
 * @param pointed what is under the pointer
 * @param finding the number of the finding gone to, from 1
 * @param measures in what measures lengths are shown and read
 * @param glance the finding, or its fix, that the hand rests on in the list
 * @param seen the steps that were looked at, or that came with a file
 */
public record Sight(
    Step step,
    Viewport viewport,
    boolean isFitted,
    Pick picked,
    Pick pointed,
    OptionalInt finding,
    Measures measures,
    Optional<Glance> glance,
    Set<Step> seen) {
  /** Copies the set. */
  public Sight {
    seen = Set.copyOf(seen);
  }

  /**
   * What the hand rests on in the list of findings, without choosing it yet.
   *
   * @param finding the number of the finding, from 1
   * @param fix which of its fixes, from 0; empty where it rests on the finding itself
   */
  public record Glance(int finding, OptionalInt fix) {}

  /** Blank paper. */
  public static final Sight FIRST =
      new Sight(
          Step.OUTLINE,
          Viewport.BLANK,
          true,
          Pick.NOTHING,
          Pick.NOTHING,
          OptionalInt.empty(),
          Measures.PLAN,
          Optional.empty(),
          Set.of(Step.OUTLINE));

  /** At another step. */
  public Sight at(Step value) {
    Set<Step> all = EnumSet.of(value);
    all.addAll(seen);
    return new Sight(value, viewport, isFitted, picked, pointed, finding, measures, glance, all);
  }

  /** With every step of a plan that came in a file taken as looked at. */
  Sight havingSeenAll() {
    Set<Step> all = EnumSet.allOf(Step.class);
    return new Sight(step, viewport, isFitted, picked, pointed, finding, measures, glance, all);
  }

  /** With the plan lying otherwise. */
  public Sight with(Viewport value, boolean fitted) {
    return new Sight(step, value, fitted, picked, pointed, finding, measures, glance, seen);
  }

  /** With something picked. */
  public Sight picking(Pick value) {
    return new Sight(
        step,
        viewport,
        isFitted,
        value,
        pointed,
        OptionalInt.empty(),
        measures,
        Optional.empty(),
        seen);
  }

  /** With something under the pointer. */
  public Sight pointingAt(Pick value) {
    return new Sight(step, viewport, isFitted, picked, value, finding, measures, glance, seen);
  }

  /** Gone to a finding. */
  public Sight goneTo(int number) {
    return new Sight(
        step, viewport, isFitted, picked, pointed, OptionalInt.of(number), measures, glance, seen);
  }

  /** With something else picked and the finding still gone to. */
  Sight stillAtFinding(Pick value) {
    return new Sight(step, viewport, isFitted, value, pointed, finding, measures, glance, seen);
  }

  /** Whether only how the plan lies in the window differs, and what is under the pointer. */
  boolean isSameButView(Sight other) {
    return step == other.step
        && picked.equals(other.picked)
        && finding.equals(other.finding)
        && measures == other.measures;
  }

  /** With the hand resting on something in the list, or on nothing there. */
  public Sight glancingAt(Optional<Glance> value) {
    return new Sight(step, viewport, isFitted, picked, pointed, finding, measures, value, seen);
  }

  /** In other measures. */
  public Sight in(Measures value) {
    return new Sight(step, viewport, isFitted, picked, pointed, finding, value, glance, seen);
  }
}
