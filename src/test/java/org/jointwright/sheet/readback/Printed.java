package org.jointwright.sheet.readback;

/**
 * A line of text as it stands on a printed page.
 *
 * @param page the page, from 0
 * @param x where it starts, millimetres from the left
 * @param y its baseline, millimetres from the top
 * @param width its width along its baseline, millimetres
 * @param size the size of its type, millimetres; the smallest where sizes are mixed
 * @param angle degrees it is turned counter-clockwise
 * @param font the font's name
 * @param text the text
 */
record Printed(
    int page,
    double x,
    double y,
    double width,
    double size,
    double angle,
    String font,
    String text) {
  double right() {
    return x + width;
  }

  boolean isBold(String weight) {
    return font.endsWith("-" + weight);
  }

  /** The height of its capitals, millimetres: 1433/2000 of the size. */
  double capital() {
    return size * 0.7165;
  }

  double middleX() {
    return x + width / 2 * Math.cos(Math.toRadians(angle));
  }

  double middleY() {
    return y - width / 2 * Math.sin(Math.toRadians(angle));
  }

  Printed withText(String other) {
    return new Printed(page, x, y, width, size, angle, font, other);
  }
}
