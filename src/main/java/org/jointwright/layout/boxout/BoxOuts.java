package org.jointwright.layout.boxout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.joint.Cutouts;
import org.jointwright.layout.piece.Limits;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;

/** The box-outs of a slab and the filler round them. */
public final class BoxOuts {
  /** A locked joint that ends this near to a box-out was laid to meet it, inches. */
  private static final double MEETS = 0.5;

  private BoxOuts() {}

  /**
   * For each fixed object that stands in a slab, or each group of them close together, the ways to
   * box it out, the likeliest first. A box-out that a locked joint of the user's meets stays as it
   * is.
   */
  public static List<List<Around>> choices(Slab slab, List<FixedObject> objects, boolean metric) {
    List<List<Around>> found = new ArrayList<>();
    List<FixedObject> free = new ArrayList<>();
    for (FixedObject f : objects) {
      List<BoxOut> held = heldByJoints(slab, f);
      if (!held.isEmpty()) {
        found.add(List.of(new Around(held)));
      } else if (Cutouts.standsIn(slab, f)) {
        free.add(f);
      }
    }
    Region region = slab.region();
    Point axis = Shapes.axis(slab.outline().ring());
    double spacing = spacing(slab, free.size());
    found.addAll(Together.ways(free, rings -> Shapes.of(region, axis, rings, spacing, metric)));
    return found;
  }

  /**
   * The box-outs of a slab's objects that are what they were, each corner moved by no more than
   * {@code moved} inches; empty where one is not, or where objects stand so close that they are
   * boxed out together: then {@link #choices} tells.
   */
  public static Optional<List<BoxOut>> like(
      List<BoxOut> was, Slab slab, List<FixedObject> objects, boolean metric, double moved) {
    List<BoxOut> found = new ArrayList<>();
    Region region = slab.region();
    Point axis = Shapes.axis(slab.outline().ring());
    double spacing = spacing(slab, objects.size());
    for (FixedObject f : objects) {
      if (Cutouts.standsIn(slab, f)) {
        List<BoxOut> own = was.stream().filter(b -> b.fixed().equals(f.id())).toList();
        if (own.size() != 1 || Together.isClose(f, objects) || !heldByJoints(slab, f).isEmpty()) {
          return Optional.empty();
        }
        Optional<Outline> like =
            Shapes.like(
                own.getFirst().outline(), region, axis, f.shape().ring(), spacing, metric, moved);
        if (like.isEmpty()) {
          return Optional.empty();
        }
        found.add(new BoxOut(f.id(), like.get(), Kept.NOTHING));
      }
    }
    return Optional.of(found);
  }

  /**
   * How far apart joints run, so that a box-out may reach out to one. Not among several objects:
   * only so many sets of box-outs are tried, and their usual ones come first.
   */
  private static double spacing(Slab slab, int objects) {
    return objects == 1 ? Limits.of(slab).spacing() : Double.POSITIVE_INFINITY;
  }

  private static List<BoxOut> heldByJoints(Slab slab, FixedObject f) {
    return slab.boxOuts().stream()
        .filter(b -> b.fixed().equals(f.id()))
        .filter(b -> slab.lockedJoints().stream().anyMatch(j -> meets(j, b)))
        .toList();
  }

  private static boolean meets(Joint joint, BoxOut box) {
    var ring = box.outline().ring();
    return ring.distance(joint.path().start()) < MEETS || ring.distance(joint.path().end()) < MEETS;
  }

  /** The filler round box-outs, as far as it does not lie on an edge of the slab. */
  public static List<Joint> filler(List<BoxOut> boxes, Slab slab) {
    List<Joint> found = new ArrayList<>();
    List<Edge> own = new ArrayList<>(slab.outline().ring().edges());
    slab.openings().forEach(o -> own.addAll(o.outline().ring().edges()));
    for (Ring ring : rings(boxes)) {
      List<Edge> edges = ring.edges();
      int n = edges.size();
      int first = 0;
      while (first < n && !isOn(own, edges.get(first))) {
        first++;
      }
      List<Edge> free = new ArrayList<>();
      for (int i = first; i <= first + n; i++) {
        Edge e = edges.get(i % n);
        if (i < first + n && !isOn(own, e)) {
          free.add(e);
        } else if (!free.isEmpty()) {
          found.add(Joint.of("", JointKind.ISOLATION, new Path(free), Purpose.ISOLATION));
          free.clear();
        }
      }
    }
    return found;
  }

  /** Where box-outs run, one that objects share once. */
  public static List<Ring> rings(List<BoxOut> boxes) {
    return boxes.stream().map(b -> b.outline().ring()).distinct().toList();
  }

  private static boolean isOn(List<Edge> own, Edge edge) {
    return own.stream()
        .anyMatch(
            e ->
                e.distance(edge.at(0.5)) < 0.1
                    && e.distance(edge.start()) < 0.1
                    && e.distance(edge.end()) < 0.1);
  }
}
