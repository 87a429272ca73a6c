package org.jointwright.measure;

/** One piece of a written length. */
sealed interface LengthToken {
  /** Where it starts in the text. */
  int at();

  /**
   * A number.
   *
   * @param at where it starts
   * @param value the number, 0 or more
   * @param isWhole whether it is written without a fraction or decimals
   */
  record Amount(int at, double value, boolean isWhole) implements LengthToken {}

  /** A unit, by word or mark. */
  record Unit(int at, LengthUnit unit) implements LengthToken {}

  /** A hyphen, dash or minus sign. */
  record Dash(int at) implements LengthToken {}
}
