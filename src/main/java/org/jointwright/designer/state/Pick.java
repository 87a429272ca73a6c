package org.jointwright.designer.state;

import java.util.List;
import java.util.Optional;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.Thing;
import org.jointwright.shape.Point;

/** What is picked on the plan, or lies under the pointer. */
public sealed interface Pick {
  /** Nothing. */
  record Nothing() implements Pick {}

  /** A whole slab. */
  record WholeSlab(String slab) implements Pick {}

  /** A corner of a slab or an opening. */
  record AtCorner(Ref corner) implements Pick {}

  /** The edge that leaves a vertex. */
  record AtEdge(Ref edge) implements Pick {}

  /** A joint of a slab. */
  record AtJoint(String slab, String joint) implements Pick {}

  /** A fixed object. */
  record AtFixed(String id) implements Pick {}

  /** An opening of a slab. */
  record AtOpening(String slab, int opening) implements Pick {}

  /** Something marked on a side, by its number along it. */
  record AtFeature(Ref edge, int feature) implements Pick {}

  /** A zone of a slab that is kept clear, by its number in it. */
  record AtZone(String slab, int zone) implements Pick {}

  /** A joint that is there already beside the slabs, by its number in the plan. */
  record AtGiven(int joint) implements Pick {}

  /** Several whole things, two at least. */
  record Several(List<Thing> things) implements Pick {
    /** Copies the list. */
    public Several {
      things = List.copyOf(things);
    }
  }

  /** The photo beneath. */
  record AtPhoto() implements Pick {}

  /**
   * The photo beneath, while its scale is set: two places on it, the first and then the other.
   *
   * @param from the first, in the plan
   * @param to the other
   */
  record Scaling(Optional<Point> from, Optional<Point> to) implements Pick {
    /** Neither place is known yet. */
    public static final Scaling BEGUN = new Scaling(Optional.empty(), Optional.empty());

    /** With one place more; after both a third begins anew. */
    public Scaling at(Point place) {
      return from.isPresent() && to.isEmpty()
          ? new Scaling(from, Optional.of(place))
          : new Scaling(Optional.of(place), Optional.empty());
    }
  }

  /** Nothing is picked. */
  Pick NOTHING = new Nothing();
}
