package org.jointwright.sheet.page;

import java.util.List;
import java.util.Optional;

/**
 * A size of paper, lying or standing.
 *
 * @param name the word that asks for it
 * @param width millimetres across
 * @param height millimetres down
 * @param type how much larger than on letter paper everything but the plan is: a large sheet is
 *     read from farther off (common practice, no source)
 */
public record Paper(String name, double width, double height, double type) {
  private static final double MM_PER_INCH = 25.4;

  /** 11 x 8.5 in (ANSI/ASME Y14.1, size A). */
  public static final Paper LETTER = inches("letter", 11, 8.5, 1);

  /** 17 x 11 in (ANSI/ASME Y14.1, size B). */
  public static final Paper TABLOID = inches("tabloid", 17, 11, 1.2);

  /** 24 x 18 in (the architects’ series of sheets, from memory). */
  public static final Paper ARCH_C = inches("arch-c", 24, 18, 1.5);

  /** 297 x 210 mm (ISO 216). */
  public static final Paper A4 = new Paper("a4", 297, 210, 1);

  /** 420 x 297 mm (ISO 216). */
  public static final Paper A3 = new Paper("a3", 420, 297, 1.2);

  /** 594 x 420 mm (ISO 216). */
  public static final Paper A2 = new Paper("a2", 594, 420, 1.5);

  /** All of them lying, the small first. */
  public static final List<Paper> ALL = List.of(LETTER, TABLOID, ARCH_C, A4, A3, A2);

  private static Paper inches(String name, double width, double height, double type) {
    return new Paper(name, width * MM_PER_INCH, height * MM_PER_INCH, type);
  }

  /** The page as it is laid out, with type as on letter paper; it is enlarged when it is bound. */
  public Paper laidOut() {
    return new Paper(name, width / type, height / type, type);
  }

  /** The paper of that name, lying; empty where there is none. */
  public static Optional<Paper> of(String name) {
    return ALL.stream().filter(p -> p.name().equals(name)).findFirst();
  }

  /** The same paper standing, if it lies, or lying. */
  public Paper turned() {
    return new Paper(name, height, width, type);
  }
}
