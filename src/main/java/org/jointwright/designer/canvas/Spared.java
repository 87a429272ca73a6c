package org.jointwright.designer.canvas;

import java.util.List;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Viewport;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** What lies above the plan, beneath which nothing is written. */
final class Spared {
  /** What the window takes of the paper's width for the step, the arrow and the scale; pixels. */
  private static final double STEP = 380;

  private static final double NORTH = 90;
  private static final double SCALE = 190;

  /** What a tape's line takes to either side, twice; pixels. */
  private static final double TAPE = 6;

  private Spared() {}

  /** Takes the places of what the window writes, and of the tape of what is picked or held. */
  static void take(Desk desk, List<Mark> held, Places places) {
    over(desk.viewport()).forEach(places::take);
    if (desk.draft().isEmpty() && desk.hand().waiting().isEmpty()) {
      held.forEach(m -> take(m, places));
    }
  }

  /** The step left above, the hint right below. */
  private static List<Box> over(Viewport viewport) {
    Box paper = viewport.paper();
    Box free = viewport.written();
    return List.of(
        new Box(0, 0, Math.min(STEP, paper.maxX() - NORTH), free.minY()),
        new Box(SCALE, free.maxY(), Math.max(SCALE, paper.maxX()), paper.maxY()));
  }

  private static void take(Mark mark, Places places) {
    if (mark instanceof Mark.Words w) {
      places.take(InSight.room(w));
    } else if (mark instanceof Mark.Line l && l.role() == Role.STRING) {
      for (Edge e : l.path().edges()) {
        for (double s = 0; s <= e.length(); s += TAPE) {
          Point at = e.at(e.length() == 0 ? 0 : s / e.length());
          places.take(Box.of(at, at).grown(TAPE / 2));
        }
      }
    }
  }
}
