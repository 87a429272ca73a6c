package org.jointwright.shape;

import java.util.List;

/**
 * A ring and the holes in it.
 *
 * @param outer runs counter-clockwise
 * @param holes each runs counter-clockwise too, as it would alone
 */
public record Region(Ring outer, List<Ring> holes) {
  /** Turns every ring counter-clockwise. */
  public Region {
    outer = outer.counterClockwise();
    holes = holes.stream().map(Ring::counterClockwise).toList();
  }

  /** A region without holes. */
  public static Region of(Ring outer) {
    return new Region(outer, List.of());
  }

  /** The area without the holes, square inches. */
  public double area() {
    return outer.area() - holes.stream().mapToDouble(Ring::area).sum();
  }

  /** Whether {@code p} lies inside and in no hole; on a line either answer may come. */
  public boolean contains(Point p) {
    return outer.contains(p) && holes.stream().noneMatch(h -> h.contains(p));
  }
}
