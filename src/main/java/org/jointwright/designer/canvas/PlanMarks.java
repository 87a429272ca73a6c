package org.jointwright.designer.canvas;

import java.util.List;
import org.jointwright.check.Finding;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.drawing.Flags;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Pens;
import org.jointwright.drawing.PlanDrawing;
import org.jointwright.joint.Layout;

/** What is drawn on the paper while nothing moves. */
public final class PlanMarks {
  private PlanMarks() {}

  /** How far beside the paper something may stand whose marks reach onto it; pixels. */
  private static final double REACH = 60;

  /** The marks of the plan itself, as far as they are in sight. */
  public static List<Mark> plan(Known known, Desk desk) {
    Layout layout = known.layout();
    // On a low paper less is free round the plan: the bands go no farther than what is written.
    Pens pens = Pens.SCREEN.banded(desk.viewport().beside());
    return layout.plan().slabs().isEmpty()
        ? List.of()
        : List.of(
            PlanDrawing.of(
                known.lines(), desk.viewport().view(), pens, desk.viewport().paper().grown(REACH)),
            PlanDrawing.locked(layout, desk.viewport().view(), pens));
  }

  /** What is picked, unless it moves: under what is written, so that its halo covers no figure. */
  public static List<Mark> picked(Desk desk) {
    boolean isMoving =
        desk.hand()
            .hold()
            .filter(
                h ->
                    h instanceof Hold.HeldJoint
                        || h instanceof Hold.HeldCorner
                        || h instanceof Hold.HeldThings
                        || h instanceof Hold.HeldSide
                        || h instanceof Hold.HeldArea)
            .isPresent();
    return isMoving || desk.draft().isPresent()
        ? List.of()
        : PickMarks.picked(desk.plan(), desk.picked(), desk.viewport().view());
  }

  /** The flag of a finding's severity. */
  public static Flags.Shape shape(Finding f) {
    return switch (f.severity()) {
      case MUST -> Flags.Shape.MUST;
      case SHOULD -> Flags.Shape.SHOULD;
      case NOTE -> Flags.Shape.NOTE;
    };
  }
}
