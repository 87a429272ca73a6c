package org.jointwright.designer.node;

import org.jointwright.check.Severity;
import org.jointwright.designer.canvas.Brush;
import org.jointwright.drawing.Flags;
import org.jointwright.drawing.Mark;
import org.jointwright.shape.Point;

/** A finding's flag in a list: as on the plan, without its stake. */
public final class FlagIcon extends Vignette {
  private static final double SIZE = 19;

  /** The flag with {@code figure} on it. */
  public FlagIcon(String figure, Severity severity, Brush brush) {
    super(
        brush,
        SIZE * (1.9 + 0.5 * (figure.length() - 1)),
        SIZE + 4,
        painter -> {
          Mark.Group flag = Flags.flag(new Point(1.5, 2 * SIZE + 2), figure, shape(severity), SIZE);
          // The first mark of a flag is its stake.
          painter.paint(flag.marks().subList(1, flag.marks().size()));
        });
  }

  private static Flags.Shape shape(Severity severity) {
    return switch (severity) {
      case MUST -> Flags.Shape.MUST;
      case SHOULD -> Flags.Shape.SHOULD;
      case NOTE -> Flags.Shape.NOTE;
    };
  }
}
