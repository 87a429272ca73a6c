package org.jointwright.designer.ready;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.FixedEdit;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * A fixed object or an opening that is not in its place yet.
 *
 * @param kind what object it is; empty for an opening
 * @param wide how wide it is, across the middle of a round object, inches
 * @param deep how deep it is, inches
 * @param isSquare whether an object has four sides, level and plumb, rather than being round
 */
public record Addition(Optional<FixedKind> kind, double wide, double deep, boolean isSquare) {
  /** A post of 4 by 4 in its concrete collar is about this across; from memory. Inches. */
  private static final double POST = 8;

  /** The side of a new opening, inches. */
  private static final double SIDE = 24;

  /** Farther from all that is in a slab by so much is the better place for one more, inches. */
  private static final double BETTER = 6;

  /** A post of the usual size. */
  public static final Addition OBJECT =
      new Addition(Optional.of(FixedKind.POST), POST, POST, false);

  /** An opening of the usual size. */
  public static final Addition OPENING = new Addition(Optional.empty(), SIDE, SIDE, false);

  /** The same object of another kind. */
  public Addition of(FixedKind value) {
    return new Addition(Optional.of(value), wide, deep, isSquare);
  }

  /** The same so wide and deep. */
  public Addition sized(double newWide, double newDeep) {
    return new Addition(kind, newWide, newDeep, isSquare);
  }

  /**
   * An object of another size.
   *
   * @param across one figure of a round one, two of one with four sides; inches
   */
  public Addition across(List<Double> across) {
    return new Addition(kind, across.getFirst(), across.getLast(), across.size() > 1);
  }

  /** Its rim where its middle is at {@code at}. */
  public Ring ring(Point at) {
    return kind.isPresent() ? shape(at).ring() : outline(at).ring();
  }

  /** The shape of an object whose middle is at {@code at}. */
  public FixedShape shape(Point at) {
    return isSquare
        ? new FixedShape.Outlined(outline(at), Kept.NOTHING)
        : new FixedShape.Round(at, Length.inches(wide), Kept.NOTHING);
  }

  private Outline outline(Point at) {
    double x = wide / 2;
    double y = deep / 2;
    return Outline.of(
        List.of(
            at.plus(new Point(-x, -y)),
            at.plus(new Point(x, -y)),
            at.plus(new Point(x, y)),
            at.plus(new Point(-x, y))));
  }

  /**
   * What puts it in a slab.
   *
   * @param name what an object is called
   */
  public Edit in(String slab, Point at, String name) {
    return kind.<Edit>map(
            k -> new FixedEdit.Add(new FixedObject(name, slab, k, shape(at), Kept.NOTHING)))
        .orElseGet(
            () -> new SlabEdit.AddOpening(slab, new Opening(outline(at), Map.of(), Kept.NOTHING)));
  }

  /** A name with the first number that no fixed object has with it. */
  public static String freeName(Plan plan, String name) {
    int n = 1;
    while (plan.fixedObject(name + " " + n).isPresent()) {
      n++;
    }
    return name + " " + n;
  }

  /** A point well inside: the middle of the box, or of the box’s parts where that is taken. */
  public static Point middle(Plan plan, Slab slab) {
    Box box = slab.outline().ring().box();
    Point best = box.centre();
    double far = -1;
    for (double x : new double[] {0.5, 0.25, 0.75}) {
      for (double y : new double[] {0.5, 0.25, 0.75}) {
        Point p =
            new Point(
                Math.rint(box.minX() + x * box.width()), Math.rint(box.minY() + y * box.height()));
        double d = slab.region().contains(p) ? clear(plan, slab, p) : -1;
        if (d > far + BETTER) {
          far = d;
          best = p;
        }
      }
    }
    return best;
  }

  /** How far a point stands from a slab’s edge, its openings and what is fixed in it, inches. */
  public static double clear(Plan plan, Slab slab, Point p) {
    double clear = slab.outline().ring().distance(p);
    for (Opening o : slab.openings()) {
      clear = Math.min(clear, o.outline().ring().distance(p));
    }
    for (FixedObject f : plan.fixedIn(slab.id())) {
      Ring ring = f.shape().ring();
      clear = Math.min(clear, ring.contains(p) ? 0 : ring.distance(p));
    }
    return clear;
  }
}
