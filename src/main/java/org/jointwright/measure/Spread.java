package org.jointwright.measure;

/**
 * How far a liquid goes.
 *
 * @param perGallon the area that a US gallon covers
 */
public record Spread(Area perGallon) {
  /** What an area takes. */
  public Liquid over(Area area) {
    return new Liquid(area.squareInches() / perGallon.squareInches());
  }

  /** The area that a litre covers, square metres. */
  public double squareMetresPerLitre() {
    return perGallon.squareMetres() / new Liquid(1).litres();
  }
}
