package org.jointwright.designer.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.ready.Addition;
import org.jointwright.designer.ready.ReadyShape;
import org.jointwright.designer.sketch.Guide;
import org.jointwright.designer.sketch.Pencil;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.Joint;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.Thing;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** What the hand holds while it drags. */
public sealed interface Hold {
  /**
   * A corner.
   *
   * @param corner which one
   * @param was where it stood
   * @param pencil where it stands, and what drew it there
   */
  record HeldCorner(Ref corner, Point was, Pencil pencil) implements Hold {}

  /**
   * A joint.
   *
   * @param slab its slab
   * @param number its number before the drag, as text
   * @param was where it ran
   * @param now the joint where it runs
   * @param guide what drew it there
   */
  record HeldJoint(String slab, String number, Path was, Joint now, Optional<Guide> guide)
      implements Hold {}

  /** Something marked on a side. */
  record HeldFeature(Pick.AtFeature pick) implements Hold {}

  /**
   * A zone that is kept clear, or an old joint beside the slabs.
   *
   * @param pick which one
   * @param moved how far it has come
   */
  record HeldGround(Pick pick, Point moved) implements Hold {}

  /** A fixed object. */
  record HeldFixed(String id) implements Hold {}

  /**
   * Whole things that are moved about.
   *
   * @param things which ones
   * @param moved how far they have come, inches
   * @param pencil the corner that stands at one of another slab, where one does
   */
  record HeldThings(List<Thing> things, Point moved, Optional<Pencil> pencil) implements Hold {
    /** Copies the list. */
    public HeldThings {
      things = List.copyOf(things);
    }
  }

  /**
   * A side that is pushed out or in.
   *
   * @param edge which one
   * @param with the sides of other slabs that go along
   * @param guide the side of another slab that it is drawn against, where one does
   */
  record HeldSide(Ref edge, List<Ref> with, Optional<Guide> guide) implements Hold {
    /** Copies the list. */
    public HeldSide {
      with = List.copyOf(with);
    }
  }

  /** A side that is bent. */
  record HeldBow(Ref edge) implements Hold {}

  /**
   * An area in which all is picked.
   *
   * @param from the corner where the hand pressed
   * @param to where the hand is
   */
  record HeldArea(Point from, Point to) implements Hold {}

  /** What hangs on the hand, pressed or not, until it is set down. */
  sealed interface Waiting extends Hold {
    /** The room it takes where it is; empty where its sizes make no shape. */
    Optional<Box> box();
  }

  /**
   * A fixed object or an opening that is not in its slab yet.
   *
   * @param slab the slab that it is over, or was last
   * @param what what it is
   * @param at where its middle is
   * @param called what an object is called before its number
   * @param typed the sides of the slab from which its place was typed, the last one last
   * @param offered the sides that its place can be typed from, while it is being typed; empty
   *     before that, where it is the nearest ones
   */
  record HeldAddition(
      String slab,
      Addition what,
      Point at,
      String called,
      List<Integer> typed,
      List<Integer> offered)
      implements Waiting {
    /** Copies the lists. */
    public HeldAddition {
      typed = List.copyOf(typed);
      offered = List.copyOf(offered);
    }

    /** One whose place was not typed yet. */
    public HeldAddition(String slab, Addition what, Point at, String called) {
      this(slab, what, at, called, List.of(), List.of());
    }

    @Override
    public Optional<Box> box() {
      return Optional.of(what.ring(at).box());
    }

    /** The same in another size. */
    public HeldAddition with(Addition value) {
      return new HeldAddition(slab, value, at, called, typed, offered);
    }

    /** The same of another kind, and called after it. */
    public HeldAddition of(FixedKind kind, String name) {
      return new HeldAddition(slab, what.of(kind), at, name, typed, offered);
    }

    /** The same elsewhere. */
    public HeldAddition at(String in, Point place) {
      return in.equals(slab)
          ? new HeldAddition(in, what, place, called, typed, offered)
          : new HeldAddition(in, what, place, called);
    }

    /** The same led elsewhere by the pointer: no figure holds it any longer. */
    public HeldAddition led(String in, Point place) {
      return new HeldAddition(in, what, place, called);
    }

    /**
     * The same, its place typed from a side.
     *
     * @param among the sides that were offered; they stay, so that no row goes from under the hand
     */
    public HeldAddition from(int side, List<Integer> among) {
      List<Integer> all = new ArrayList<>(typed);
      all.add(side);
      return new HeldAddition(slab, what, at, called, all, among);
    }

    /** The points of it of which the nearest is measured: the middle of an object, a rim. */
    public List<Point> measured() {
      return what.kind().isPresent()
          ? List.of(at)
          : what.ring(at).edges().stream().map(Edge::start).toList();
    }
  }

  /**
   * A ready shape that is not set down yet.
   *
   * @param shape the shape
   * @param pencil where its first corner stands, and what drew it there
   */
  record HeldShape(ReadyShape shape, Pencil pencil) implements Waiting {
    @Override
    public Optional<Box> box() {
      return shape.at(pencil.at()).map(o -> o.ring().box());
    }
  }
}
