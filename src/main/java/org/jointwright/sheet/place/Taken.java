package org.jointwright.sheet.place;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Pens;
import org.jointwright.drawing.PlanDrawing;
import org.jointwright.drawing.View;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Path;
import org.jointwright.shape.Ring;

/** What the drawing of a plan itself takes of the page. */
public final class Taken {
  private Taken() {}

  /** The plan's own lines, which no text may touch. */
  public static void lines(Plan plan, View view, Pens pens, Ground ground) {
    for (Slab slab : plan.slabs()) {
      line(slab.outline().ring(), view, pens, ground);
      for (Opening o : slab.openings()) {
        line(o.outline().ring(), view, pens, ground);
      }
      slab.boxOuts().forEach(b -> line(b.outline().ring(), view, pens, ground));
      for (Joint j : slab.joints()) {
        double width =
            switch (j.kind()) {
              case CONTRACTION -> pens.contraction();
              case CONSTRUCTION -> pens.construction();
              case ISOLATION -> pens.fillerLeast();
            };
        ground.addLine(view.on(j.path()), width);
        if (j.kind() == JointKind.CONSTRUCTION && pens.stub() > 0) {
          ground.addLine(view.on(j.path()), 2 * pens.stub());
        }
      }
    }
    PlanDrawing.told(plan, view, pens).forEach(l -> ground.addLine(l.path(), l.width()));
    plan.fixed().forEach(f -> line(f.shape().ring(), view, pens, ground));
  }

  private static void line(Ring ring, View view, Pens pens, Ground ground) {
    ground.addLine(view.on(new Path(ring.edges())), pens.outline());
  }

  /** Where buildings and streets are tinted: no place for a legend. */
  public static List<Quad> tinted(Mark.Group drawing) {
    List<Quad> tinted = new ArrayList<>();
    for (Mark group : drawing.marks()) {
      if (group instanceof Mark.Group g && g.name().equals("grounds")) {
        for (Mark mark : g.marks()) {
          if (mark instanceof Mark.Area area) {
            Box b = area.rings().getFirst().box();
            tinted.add(Quad.box(b.minX(), b.minY(), b.maxX(), b.maxY()));
          }
        }
      }
    }
    return tinted;
  }
}
