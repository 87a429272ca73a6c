package org.jointwright.sheet;

/**
 * A size of paper, lying.
 *
 * @param name its usual name
 * @param width millimetres across
 * @param height millimetres down
 */
public record Paper(String name, double width, double height) {
  /** US letter, 11 x 8.5 in (ASME Y14.1, size A). */
  public static final Paper LETTER = new Paper("Letter", 11 * 25.4, 8.5 * 25.4);
}
