package org.jointwright.measure;

/**
 * An area, kept in square inches.
 *
 * @param squareInches the area in square inches; finite
 */
public record Area(double squareInches) {
  private static final double SQUARE_INCHES_PER_SQUARE_FOOT = 144;
  private static final double SQUARE_METRES_PER_SQUARE_INCH = 0.0254 * 0.0254;

  /** Refuses what is not finite. */
  public Area {
    if (!Double.isFinite(squareInches)) {
      throw new IllegalArgumentException("an area must be finite, not " + squareInches);
    }
  }

  /** This area in square feet. */
  public double squareFeet() {
    return squareInches / SQUARE_INCHES_PER_SQUARE_FOOT;
  }

  /** This area in square metres. */
  public double squareMetres() {
    return squareInches * SQUARE_METRES_PER_SQUARE_INCH;
  }
}
