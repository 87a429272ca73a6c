package org.jointwright.file;

import org.jointwright.file.json.Json;
import org.jointwright.measure.Length;
import org.jointwright.plan.EdgeSetting.Thickened;
import org.jointwright.plan.Photo;
import org.jointwright.plan.Pour;
import org.jointwright.plan.Sizes;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Ring;

/** What a length, and a slab, may be. Bounds of sense, not of good practice: checks judge that. */
enum Bounds {
  /** Thickness of a slab: over 24 in is feet written for inches. */
  THICKNESS(Sizes.THINNEST, Sizes.THICKEST, "4 in", "100 mm", "file.thicknessOutOfBounds"),
  /** Stone under a slab; none at all is a choice. */
  BASE(0, 48, "4 in", "100 mm", "file.baseOutOfBounds"),
  /** Distance between joints, and the narrowest panel. */
  SPACING(6, 12_000, "10 ft", "3 m", "file.spacingOutOfBounds"),
  /** Diameter of a fixed object. */
  DIAMETER(0.25, 1200, "8 in", "200 mm", "file.diameterOutOfBounds"),
  /** Depth of a joint. */
  DEPTH(0.0625, 24, "1 in", "25 mm", "file.depthOutOfBounds"),
  /** Width of a joint. */
  WIDTH(0.0625, 6, "1/2 in", "12 mm", "file.widthOutOfBounds"),
  /** Where a feature of an edge starts or ends. */
  ALONG_EDGE(0, Sizes.LONGEST, "2 ft", "600 mm", "file.distanceOutOfBounds"),
  /** Width of the photo beneath. */
  PHOTO(Photo.NARROWEST, Sizes.LONGEST, "40 ft", "12 m", "file.photoOutOfBounds"),
  /** How thick a slab is along a thickened edge. */
  THICKENED(Sizes.THINNEST, Sizes.THICKEST, "8 in", "200 mm", "file.thickenedOutOfBounds"),
  /** How far from a thickened edge the slab comes back to its thickness. */
  TAPER(
      Thickened.NARROWEST.inches(),
      Thickened.WIDEST.inches(),
      "12 in",
      "300 mm",
      "file.taperOutOfBounds"),
  /** How far a cone of the mix slumps. */
  SLUMP(0.5, 10, "4 in", "100 mm", "file.slumpOutOfBounds"),
  /** The nominal maximum size of the stone in the mix. */
  STONE(0.25, 2.5, "3/4 in", "20 mm", "file.stoneOutOfBounds"),
  /** Width of a strip that is poured at a time: a crew's board, or a machine. */
  STRIP(Pour.NARROWEST.inches(), Pour.WIDEST.inches(), "12 ft", "3.6 m", "file.stripOutOfBounds");

  /** More panels than this no crew cuts. */
  private static final double MOST_PANELS = 20_000;

  private final double least;
  private final double most;
  private final String example;
  private final String metricExample;
  private final String key;

  Bounds(double least, double most, String example, String metricExample, String key) {
    this.least = least;
    this.most = most;
    this.example = example;
    this.metricExample = metricExample;
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
        Length.inches(inches),
        Length.inches(least),
        Length.inches(most),
        reading.unit().isMetric() ? metricExample : example);
    return false;
  }

  /** Refuses a slab whose size is likelier a slip of the unit. */
  static void ofSlab(Reading reading, Place place, int line, Slab slab) {
    Ring ring = slab.outline().ring();
    Box box = ring.box();
    Place outline = place.key("outline");
    String unit = reading.unit().symbol();
    if (Sizes.isTooLarge(ring)) {
      reading.problem(
          outline,
          line,
          "file.slabTooLarge",
          Length.inches(box.width()),
          Length.inches(box.height()),
          unit);
    } else if (Sizes.isTooSmall(ring)) {
      reading.problem(
          outline,
          line,
          "file.slabTooSmall",
          Length.inches(box.width()),
          Length.inches(box.height()),
          unit);
    }
    slab.jointing()
        .maxSpacing()
        .filter(s -> ring.area() / (s.inches() * s.inches()) > MOST_PANELS)
        .ifPresent(
            s ->
                reading.problem(
                    place.key("jointing").key("maxSpacing"), line, "file.tooManyPanels"));
  }
}
