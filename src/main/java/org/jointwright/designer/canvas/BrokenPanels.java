package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.designer.state.Viewport;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.shape.Box;
import org.jointwright.shape.Ring;

/** The panels that break a rule that must hold, to be tinted. */
public final class BrokenPanels {
  /** How strong the tint is. */
  public static final double STRENGTH = 0.13;

  private BrokenPanels() {}

  /** The panels in sight as areas of the colour of what must be mended. */
  public static List<Mark> of(Known known, Viewport viewport) {
    View view = viewport.view();
    Box seen = viewport.seen();
    List<Mark> marks = new ArrayList<>();
    for (List<Ring> panel : known.broken()) {
      if (panel.getFirst().box().meets(seen)) {
        marks.add(new Mark.Area(panel.stream().map(view::on).toList(), Role.MUST));
      }
    }
    return marks;
  }
}
