package org.jointwright.drawing;

/**
 * The widths and least sizes of marks on a medium, in its units. Widths on paper: ASME Y14.2 asks
 * for a thin line of 0.3 mm and a thick one of 0.6 mm at least (2008 edition, as quoted by a
 * drafting summary); the steps between are the ISO pen series 0.18, 0.25, 0.35, 0.5, 0.7, 1.0.
 *
 * @param outline the edge of a slab
 * @param contraction a contraction joint
 * @param construction a construction joint
 * @param stub the length of the stubs on a construction joint
 * @param stubEvery how far apart they stand
 * @param filler each of the two lines of an isolation joint
 * @param fillerLeast how far apart they are at least
 * @param hatchEvery how far apart the hatching of filler stands, along the joint
 * @param thin dimensions and walls
 * @param band how deep what stands beside a slab is drawn at most
 */
public record Pens(
    double outline,
    double contraction,
    double construction,
    double stub,
    double stubEvery,
    double filler,
    double fillerLeast,
    double hatchEvery,
    double thin,
    double band) {
  /** Pixels at 100 %. */
  public static final Pens SCREEN = new Pens(2.2, 1.3, 3.2, 6, 15, 1.1, 6, 6, 1, 48);

  /** Millimetres on paper. */
  public static final Pens PAPER = new Pens(0.7, 0.5, 1.0, 2, 5, 0.35, 1.7, 2.1, 0.35, 13.6);

  /** The same marks {@code factor} times as large, for screens of other text sizes. */
  public Pens times(double factor) {
    return new Pens(
        outline * factor,
        contraction * factor,
        construction * factor,
        stub * factor,
        stubEvery * factor,
        filler * factor,
        fillerLeast * factor,
        hatchEvery * factor,
        thin * factor,
        band * factor);
  }

  /** The same marks, what stands beside a slab drawn {@code most} deep at most. */
  public Pens banded(double most) {
    return new Pens(
        outline,
        contraction,
        construction,
        stub,
        stubEvery,
        filler,
        fillerLeast,
        hatchEvery,
        thin,
        Math.min(band, most));
  }
}
