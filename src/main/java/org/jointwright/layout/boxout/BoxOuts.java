package org.jointwright.layout.boxout;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Chords;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/** The box-outs of a slab and the filler round them. */
public final class BoxOuts {
  private static final double CLEAR = org.jointwright.practice.BoxOuts.CLEAR.value().inches();

  private BoxOuts() {}

  /** A box-out round each fixed object. */
  public static List<BoxOut> round(Slab slab, List<FixedObject> objects, boolean metric) {
    List<BoxOut> found = new ArrayList<>();
    Point axis = longestDirection(slab.outline().ring());
    for (FixedObject f : objects) {
      found.add(new BoxOut(f.id(), turnedSquare(f.shape().ring(), axis, metric), Kept.NOTHING));
    }
    return found;
  }

  private static Point longestDirection(Ring ring) {
    Edge longest = ring.edges().getFirst();
    for (Edge e : ring.edges()) {
      if (e instanceof Segment && (longest.turn() != 0 || e.length() > longest.length() + 0.01)) {
        longest = e;
      }
    }
    return longest instanceof Segment s ? s.direction(0) : new Point(1, 0);
  }

  /** A square on its corner round {@code object}, its diagonals along the slab's edges. */
  static Outline turnedSquare(Ring object, Point axis, boolean metric) {
    List<Point> points = Chords.round(object, 0.02);
    Point a = axis.turned(Math.PI / 4);
    Point b = a.left();
    double[] along = extent(points, a);
    double[] across = extent(points, b);
    Point centre = a.times((along[0] + along[1]) / 2).plus(b.times((across[0] + across[1]) / 2));
    double half = Math.max(along[1] - along[0], across[1] - across[0]) / 2 + CLEAR;
    double step = metric ? 10 / 25.4 : 1;
    // Whole inches from the middle to each corner, so that the form is easily cut.
    double corner = Math.ceil(half * Math.sqrt(2) / step - 1e-6) * step;
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      corners.add(centre.plus(axis.turned(i * Math.PI / 2).times(corner)));
    }
    return Outline.of(corners);
  }

  private static double[] extent(List<Point> points, Point u) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Point p : points) {
      low = Math.min(low, p.dot(u));
      high = Math.max(high, p.dot(u));
    }
    return new double[] {low, high};
  }

  /** The filler round box-outs, as far as it lies inside the slab. */
  public static List<Joint> filler(List<BoxOut> boxes, Slab slab) {
    List<Joint> found = new ArrayList<>();
    for (BoxOut b : boxes) {
      Path ring = new Path(b.outline().ring().edges());
      found.add(Joint.of("", JointKind.ISOLATION, ring, Purpose.ISOLATION));
    }
    return found;
  }
}
