package org.jointwright.plan;

import org.jointwright.measure.Length;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** The outline of a fixed object. */
public sealed interface FixedShape {
  /** Its edge as a ring, counter-clockwise. */
  Ring ring();

  /** A round object. */
  record Round(Point at, Length diameter, Kept kept) implements FixedShape {
    @Override
    public Ring ring() {
      Point right = at.plus(new Point(diameter.inches() / 2, 0));
      Point leftmost = at.plus(new Point(-diameter.inches() / 2, 0));
      return new Ring(
          java.util.List.of(
              new Arc(right, leftmost, at, Math.PI), new Arc(leftmost, right, at, Math.PI)));
    }
  }

  /** An object with an outline of its own. */
  record Outlined(Outline outline, Kept kept) implements FixedShape {
    @Override
    public Ring ring() {
      return outline.ring().counterClockwise();
    }
  }
}
