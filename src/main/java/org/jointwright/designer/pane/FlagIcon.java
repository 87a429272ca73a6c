package org.jointwright.designer.pane;

import javafx.scene.canvas.Canvas;
import org.jointwright.check.Severity;
import org.jointwright.designer.canvas.Painter;
import org.jointwright.designer.canvas.Theme;
import org.jointwright.drawing.Flags;
import org.jointwright.drawing.Mark;
import org.jointwright.shape.Point;

/** A finding's flag in a list: as on the plan, without its stake. */
final class FlagIcon extends Canvas {
  private static final double SIZE = 19;

  FlagIcon(String figure, Severity severity, Theme theme) {
    super(SIZE * (1.9 + 0.5 * (figure.length() - 1)), SIZE + 4);
    Flags.Shape shape =
        switch (severity) {
          case MUST -> Flags.Shape.MUST;
          case SHOULD -> Flags.Shape.SHOULD;
          case NOTE -> Flags.Shape.NOTE;
        };
    Mark.Group flag = Flags.flag(new Point(1.5, 2 * SIZE + 2), figure, shape, SIZE);
    Painter painter = new Painter(getGraphicsContext2D(), theme, getWidth(), getHeight());
    // The first mark of a flag is its stake.
    painter.paint(flag.marks().subList(1, flag.marks().size()));
  }
}
