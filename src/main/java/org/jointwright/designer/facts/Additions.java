package org.jointwright.designer.facts;

import java.util.List;
import java.util.Map;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Soundness;
import org.jointwright.measure.Length;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.FixedEdit;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;

/** Things added to a slab near its middle, to be put in their place by typing. */
public final class Additions {
  /** A post of 4 by 4 in its concrete collar is about this across; from memory. Inches. */
  private static final double POST = 8;

  /** The side of a new opening, inches. */
  private static final double OPENING = 24;

  private Additions() {}

  /** An opening in the middle of a slab, or the desk told that there is no room for one. */
  public static Desk opening(Desk desk, String slabId) {
    Slab slab = desk.plan().slab(slabId).orElseThrow();
    Point c = middle(slab);
    double half = OPENING / 2;
    Outline outline =
        Outline.of(
            List.of(
                c.plus(new Point(-half, -half)),
                c.plus(new Point(half, -half)),
                c.plus(new Point(half, half)),
                c.plus(new Point(-half, half))));
    Opening opening = new Opening(outline, Map.of(), Kept.NOTHING);
    Desk added = desk.edited(new SlabEdit.AddOpening(slabId, opening));
    return Soundness.holds(added.plan(), slabId)
        ? added.picking(new Pick.AtOpening(slabId, slab.openings().size()))
        : desk.told(Notice.trouble("window.notice.noOpening", List.of()));
  }

  /**
   * A post in the middle of a slab.
   *
   * @param name what it is called, before its number
   */
  public static Desk fixed(Desk desk, String slabId, String name) {
    Slab slab = desk.plan().slab(slabId).orElseThrow();
    String id = freeName(desk.plan(), name);
    FixedShape shape = new FixedShape.Round(middle(slab), Length.inches(POST), Kept.NOTHING);
    FixedObject object = new FixedObject(id, slabId, FixedKind.POST, shape, Kept.NOTHING);
    return desk.edited(new FixedEdit.Add(object)).picking(new Pick.AtFixed(id));
  }

  /** A name with the first number that no fixed object has with it. */
  static String freeName(Plan plan, String name) {
    int n = 1;
    while (plan.fixedObject(name + " " + n).isPresent()) {
      n++;
    }
    return name + " " + n;
  }

  /** How far a point stands from the slab's edge and its openings, inches. */
  private static double clear(Slab slab, Point p) {
    return slab.openings().stream()
        .mapToDouble(o -> o.outline().ring().distance(p))
        .reduce(slab.outline().ring().distance(p), Math::min);
  }

  /** A point well inside: the middle of the box, or of the box's parts where that is outside. */
  private static Point middle(Slab slab) {
    Box box = slab.outline().ring().box();
    Point best = box.centre();
    double far = -1;
    for (double x : new double[] {0.5, 0.25, 0.75}) {
      for (double y : new double[] {0.5, 0.25, 0.75}) {
        Point p =
            new Point(
                Math.rint(box.minX() + x * box.width()), Math.rint(box.minY() + y * box.height()));
        boolean isIn = slab.region().contains(p);
        double d = isIn ? clear(slab, p) : -1;
        if (d > far + 6) {
          far = d;
          best = p;
        }
      }
    }
    return best;
  }
}
