package org.jointwright.designer.print;

/** Paper in a printer, lying. */
public enum PrintPaper {
  /** US letter, 11 x 8.5 in (ASME Y14.1, size A). */
  LETTER("window.print.letter", 279.4, 215.9),
  /** A4 (ISO 216): a little lower than letter, so that a letter page’s margins lose 3 mm each. */
  A4("window.print.a4", 297, 210);

  private final String key;
  private final double width;
  private final double height;

  PrintPaper(String key, double width, double height) {
    this.key = key;
    this.width = width;
    this.height = height;
  }

  /** The key of its name. */
  public String key() {
    return key;
  }

  /** How wide it lies, millimetres. */
  public double width() {
    return width;
  }

  /** How high it lies, millimetres. */
  public double height() {
    return height;
  }
}
