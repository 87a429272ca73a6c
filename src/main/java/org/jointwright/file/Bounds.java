package org.jointwright.file;

import org.jointwright.file.json.Json;

/** What a length may be. Bounds of sense, not of good practice: checks judge that. */
enum Bounds {
  /** Thickness of a slab: over 24 in is feet written for inches. */
  THICKNESS(1, 24, "file.thicknessOutOfBounds"),
  /** Stone under a slab; none at all is a choice. */
  BASE(0, 48, "file.baseOutOfBounds"),
  /** Distance between joints, and the narrowest panel. */
  SPACING(6, 12_000, "file.spacingOutOfBounds"),
  /** Diameter of a fixed object. */
  DIAMETER(0.25, 1200, "file.diameterOutOfBounds"),
  /** Depth of a joint. */
  DEPTH(0.0625, 24, "file.depthOutOfBounds"),
  /** Width of a joint. */
  WIDTH(0.0625, 6, "file.widthOutOfBounds");

  private final double least;
  private final double most;
  private final String key;

  Bounds(double least, double most, String key) {
    this.least = least;
    this.most = most;
    this.key = key;
  }

  /** Whether {@code inches} is within; a problem is reported when it is not. */
  boolean admit(Reading reading, Place place, Json value, double inches) {
    if (inches >= least && inches <= most) {
      return true;
    }
    reading.problem(
        place,
        value,
        key,
        Fields.shown(value),
        reading.unit().symbol(),
        Decimals.rounded(inches, 2),
        Decimals.rounded(least, 4),
        Decimals.rounded(most, 2));
    return false;
  }
}
