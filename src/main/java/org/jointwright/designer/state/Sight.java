package org.jointwright.designer.state;

import java.util.OptionalInt;

/**
 * What the user looks at.
 *
 * @param step the step of the job
 * @param viewport how the plan lies in the window
 * @param isFitted whether the whole plan is kept in sight; not after the user moved it
 * @param picked what is picked
 * @param pointed what is under the pointer
 * @param finding the number of the finding gone to, from 1
 */
public record Sight(
    Step step,
    Viewport viewport,
    boolean isFitted,
    Pick picked,
    Pick pointed,
    OptionalInt finding) {
  /** Blank paper. */
  public static final Sight FIRST =
      new Sight(
          Step.OUTLINE, Viewport.BLANK, true, Pick.NOTHING, Pick.NOTHING, OptionalInt.empty());

  /** At another step. */
  public Sight at(Step value) {
    return new Sight(value, viewport, isFitted, picked, pointed, finding);
  }

  /** With the plan lying otherwise. */
  public Sight with(Viewport value, boolean fitted) {
    return new Sight(step, value, fitted, picked, pointed, finding);
  }

  /** With something picked. */
  public Sight picking(Pick value) {
    return new Sight(step, viewport, isFitted, value, pointed, OptionalInt.empty());
  }

  /** With something under the pointer. */
  public Sight pointingAt(Pick value) {
    return new Sight(step, viewport, isFitted, picked, value, finding);
  }

  /** Gone to a finding. */
  public Sight goneTo(int number) {
    return new Sight(step, viewport, isFitted, picked, pointed, OptionalInt.of(number));
  }
}
