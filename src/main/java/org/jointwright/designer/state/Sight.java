package org.jointwright.designer.state;

import java.util.OptionalInt;
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
 */
public record Sight(
    Step step,
    Viewport viewport,
    boolean isFitted,
    Pick picked,
    Pick pointed,
    OptionalInt finding,
    Measures measures) {
  /** Blank paper. */
  public static final Sight FIRST =
      new Sight(
          Step.OUTLINE,
          Viewport.BLANK,
          true,
          Pick.NOTHING,
          Pick.NOTHING,
          OptionalInt.empty(),
          Measures.PLAN);

  /** At another step. */
  public Sight at(Step value) {
    return new Sight(value, viewport, isFitted, picked, pointed, finding, measures);
  }

  /** With the plan lying otherwise. */
  public Sight with(Viewport value, boolean fitted) {
    return new Sight(step, value, fitted, picked, pointed, finding, measures);
  }

  /** With something picked. */
  public Sight picking(Pick value) {
    return new Sight(step, viewport, isFitted, value, pointed, OptionalInt.empty(), measures);
  }

  /** With something under the pointer. */
  public Sight pointingAt(Pick value) {
    return new Sight(step, viewport, isFitted, picked, value, finding, measures);
  }

  /** Gone to a finding. */
  public Sight goneTo(int number) {
    return new Sight(step, viewport, isFitted, picked, pointed, OptionalInt.of(number), measures);
  }

  /** With something else picked and the finding still gone to. */
  Sight stillAtFinding(Pick value) {
    return new Sight(step, viewport, isFitted, value, pointed, finding, measures);
  }

  /** Whether only how the plan lies in the window differs, and what is under the pointer. */
  boolean isSameButView(Sight other) {
    return step == other.step
        && picked.equals(other.picked)
        && finding.equals(other.finding)
        && measures == other.measures;
  }

  /** In other measures. */
  public Sight in(Measures value) {
    return new Sight(step, viewport, isFitted, picked, pointed, finding, value);
  }
}
