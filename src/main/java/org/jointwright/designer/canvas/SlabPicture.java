package org.jointwright.designer.canvas;

import java.util.List;
import org.jointwright.designer.state.Viewport;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Pens;
import org.jointwright.drawing.PlanDrawing;
import org.jointwright.drawing.View;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Box;

/** One slab of a layout as a small picture. */
public final class SlabPicture {
  /** What stands free round the slab, pixels: room for a wall or filler along its edge. */
  private static final double RIM = 12;

  /** Lines are as much thinner than on the paper, since the slab is smaller. */
  private static final double THIN = 0.6;

  private SlabPicture() {}

  /**
   * The marks of a slab, as large as they go on a picture of {@code width} by {@code height}
   * pixels.
   *
   * @param slab the slab's id, one of the layout's
   */
  public static Mark of(Layout layout, String slab, double width, double height) {
    SlabLayout laid = layout.slab(slab).orElseThrow();
    Plan alone =
        layout
            .plan()
            .withFixed(layout.plan().fixedIn(slab))
            .withSlabs(List.of(laid.slab()))
            .withGiven(List.of());
    return PlanDrawing.of(
        new Layout(alone, List.of(laid)),
        view(laid.slab().outline().ring().box(), width, height),
        Pens.SCREEN.times(THIN));
  }

  private static View view(Box box, double width, double height) {
    double scale = Math.min((width - 2 * RIM) / box.width(), (height - 2 * RIM) / box.height());
    Viewport view = new Viewport(width, height, box.centre(), scale);
    return view.view();
  }
}
