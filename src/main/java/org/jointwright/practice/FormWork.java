package org.jointwright.practice;

import org.jointwright.measure.Length;

/** Form boards and the stakes that hold them. */
public final class FormWork {
  /** How far apart stakes stand at most along straight boards. */
  public static final Limit<Length> STAKES =
      Limit.of(Length.feet(3), Cited.read("home builders’ tips on forms", "", "2x4 and 2x6"));

  /** How far apart stakes stand along bent boards. */
  public static final Limit<Length> STAKES_ON_CURVES =
      Limit.of(Length.feet(2), Cited.read("how-to text on walks", "", "stakes"));

  /** How long a board is. */
  public static final Limit<Length> BOARD = Limit.of(Length.feet(16), Cited.practice());

  private FormWork() {}
}
