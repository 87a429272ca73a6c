package org.jointwright.proof.paper;

/**
 * A line of text as it stands on a printed page.
 *
 * @param page the page of the file, from 0
 * @param x where it starts, millimetres from the left
 * @param y its baseline, millimetres from the top
 * @param width its width along its baseline, millimetres
 * @param size the size of its type, millimetres; the smallest where sizes are mixed
 * @param angle degrees it is turned counter-clockwise
 * @param font the font's name
 * @param text the text
 */
public record Printed(
    int page,
    double x,
    double y,
    double width,
    double size,
    double angle,
    String font,
    String text) {
  /** A capital's height by the size of the type, of the face that the sheets are set in. */
  private static final double CAPITAL = 1433.0 / 2000;

  /** Where it ends, millimetres from the left, when it lies level. */
  public double right() {
    return x + width;
  }

  /** Whether it is set in that weight, {@code Heavy} for example. */
  public boolean isOf(String weight) {
    return font.endsWith("-" + weight);
  }

  /** The height of its capitals, millimetres. */
  public double capital() {
    return size * CAPITAL;
  }

  /** The middle of its baseline, millimetres from the left. */
  public double middleX() {
    return x + width / 2 * Math.cos(Math.toRadians(angle));
  }

  /** The middle of its baseline, millimetres from the top. */
  public double middleY() {
    return y - width / 2 * Math.sin(Math.toRadians(angle));
  }

  /** The same line on a page so many times smaller. */
  public Printed smaller(double times) {
    return new Printed(page, x / times, y / times, width / times, size / times, angle, font, text);
  }

  /** The same line with another text. */
  public Printed withText(String other) {
    return new Printed(page, x, y, width, size, angle, font, other);
  }
}
