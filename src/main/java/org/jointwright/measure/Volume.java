package org.jointwright.measure;

/**
 * A volume, of concrete as a rule, kept in cubic inches.
 *
 * @param cubicInches the volume in cubic inches; finite
 */
public record Volume(double cubicInches) implements Comparable<Volume> {
  /** Refuses what is not finite. */
  public Volume {
    if (!Double.isFinite(cubicInches)) {
      throw new IllegalArgumentException("a volume must be finite, not " + cubicInches);
    }
  }

  /** A volume of {@code value} of {@code unit}. */
  public static Volume of(double value, VolumeUnit unit) {
    return new Volume(value * unit.cubicInches());
  }

  /** A volume in cubic yards. */
  public static Volume cubicYards(double value) {
    return of(value, VolumeUnit.CUBIC_YARD);
  }

  /** What lies under an area to a depth. */
  public static Volume under(Area area, Length depth) {
    return new Volume(area.squareInches() * depth.inches());
  }

  /** This volume counted in {@code unit}. */
  public double in(VolumeUnit unit) {
    return cubicInches / unit.cubicInches();
  }

  @Override
  public int compareTo(Volume other) {
    return Double.compare(cubicInches, other.cubicInches);
  }
}
