package org.jointwright.designer.shaping;

import java.util.List;
import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Soundness;
import org.jointwright.designer.state.Things;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SplitEdit;
import org.jointwright.plan.edit.Thing;
import org.jointwright.plan.edit.ThingEdit;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Mirror;
import org.jointwright.shape.Motion;
import org.jointwright.shape.Point;

/** Whole things moved, turned, mirrored, copied, joined, taken out. */
public final class Whole {
  /** How far from what it was made of a copy stands, inches. */
  private static final double CLEAR = 24;

  /** A copy is set down no more than so many of its sizes away. */
  private static final int FARTHEST = 12;

  private Whole() {}

  /** The desk with things moved, turned or mirrored; empty where one would leave its slab. */
  public static Optional<Desk> put(Desk desk, List<Thing> things, Motion motion) {
    ThingEdit.Put edit = new ThingEdit.Put(things, motion);
    return isSound(desk, things, edit) ? Optional.of(desk.edited(edit)) : Optional.empty();
  }

  /** The same, as a part of the step before where that moved the same things. */
  public static Optional<Desk> goingOn(Desk desk, List<Thing> things, Motion motion) {
    ThingEdit.Put edit = new ThingEdit.Put(things, motion);
    return isSound(desk, things, edit) ? Optional.of(desk.goingOn(edit)) : Optional.empty();
  }

  /** Turned about the first corner of the slab that is alone, else about the middle of all. */
  public static Optional<Desk> turned(Desk desk, List<Thing> things, double degrees) {
    return pivot(desk.plan(), things).flatMap(p -> put(desk, things, Motion.turn(p, degrees)));
  }

  private static Optional<Point> pivot(Plan plan, List<Thing> things) {
    return things.size() == 1 && things.getFirst() instanceof Thing.WholeSlab s
        ? plan.slab(s.id()).map(x -> x.outline().vertices().getFirst().at())
        : Things.box(plan, things).map(Box::centre);
  }

  /**
   * Mirrored at the line through their middle.
   *
   * @param isSideways whether left and right are changed about, else above and below
   */
  public static Optional<Desk> mirrored(Desk desk, List<Thing> things, boolean isSideways) {
    Point along = isSideways ? new Point(0, 1) : new Point(1, 0);
    return Things.box(desk.plan(), things)
        .map(b -> Motion.mirror(new Mirror(b.centre(), along)))
        .flatMap(m -> put(desk, things, m));
  }

  /** A slab turned about the start of one of its sides until that lies level or plumb. */
  public static Desk levelled(Desk desk, Ref side) {
    Optional<Edge> edge = Picks.edge(desk.plan(), side);
    if (edge.isEmpty()) {
      return desk;
    }
    double degrees = Math.toDegrees(edge.get().direction(0).angle());
    double by = Math.rint(degrees / 90) * 90 - degrees;
    List<Thing> slab = List.of(new Thing.WholeSlab(side.slab()));
    return put(desk, slab, Motion.turn(edge.get().start(), by))
        .map(d -> d.picking(new Pick.AtEdge(side)))
        .orElse(desk);
  }

  /** Copies set down beside the things, and picked; or the desk told that there is no room. */
  public static Desk copied(Desk desk, List<Thing> things) {
    Optional<Box> box = Things.box(desk.plan(), things);
    if (box.isEmpty()) {
      return desk;
    }
    double right = Math.ceil(box.get().width()) + CLEAR;
    double up = Math.ceil(box.get().height()) + CLEAR;
    for (int far = 1; far <= FARTHEST; far++) {
      for (Point way :
          List.of(new Point(right, 0), new Point(0, up), new Point(-right, 0), new Point(0, -up))) {
        ThingEdit.Copy edit = new ThingEdit.Copy(things, Motion.by(way.times(far)));
        List<Thing> made = edit.made(desk.plan());
        if (isSound(desk, made, edit) && isApart(desk.plan(), made, edit)) {
          Desk copied = desk.edited(edit).picking(Things.pick(made));
          return isOut(copied, made) ? copied.fitted() : copied;
        }
      }
    }
    return desk.told(Notice.trouble("window.notice.noRoom", List.of()));
  }

  /** Whether copies of slabs lie on none of the slabs that are there. */
  private static boolean isApart(Plan before, List<Thing> made, Edit edit) {
    Plan after = edit.applyTo(before);
    return made.stream()
        .filter(Thing.WholeSlab.class::isInstance)
        .flatMap(t -> Things.box(after, List.of(t)).stream())
        .allMatch(
            b ->
                before.slabs().stream()
                    .noneMatch(s -> s.outline().ring().box().meets(b.grown(-1))));
  }

  private static boolean isOut(Desk desk, List<Thing> things) {
    Box clear = desk.viewport().clear();
    return Things.box(desk.plan(), things)
        .filter(
            b ->
                clear.holds(new Point(b.minX(), b.minY()))
                    && clear.holds(new Point(b.maxX(), b.maxY())))
        .isEmpty();
  }

  /** The desk without the things. */
  public static Desk takenOut(Desk desk, List<Thing> things) {
    return desk.edited(new ThingEdit.TakeOut(things));
  }

  /** Whether two slabs can be made one; not where they lie over one another besides. */
  public static boolean canJoin(Plan plan, String slab, String other) {
    return SplitEdit.canJoin(plan, slab, other)
        && Soundness.holds(new SplitEdit.Join(slab, other).applyTo(plan), slab);
  }

  /** Two slabs made one, which is picked; or the desk told that they share no edge. */
  public static Desk joined(Desk desk, String slab, String other) {
    return canJoin(desk.plan(), slab, other)
        ? desk.edited(new SplitEdit.Join(slab, other)).picking(new Pick.WholeSlab(slab))
        : desk.told(Notice.trouble("window.notice.notBeside", List.of()));
  }

  /** Whether each of the things stands where it may after an edit. */
  private static boolean isSound(Desk desk, List<Thing> things, Edit edit) {
    Plan after = edit.applyTo(desk.plan());
    return things.stream().allMatch(t -> stands(after, t));
  }

  private static boolean stands(Plan plan, Thing thing) {
    return switch (thing) {
      // A slab goes with all that is in it.
      case Thing.WholeSlab s -> true;
      case Thing.AnOpening o -> Soundness.holds(plan, o.slab());
      case Thing.Fixed f ->
          plan.fixedObject(f.id())
              .flatMap(x -> plan.slab(x.slab()).filter(s -> isIn(s, x)))
              .isPresent();
      case Thing.Zone z -> true;
      case Thing.Given g -> true;
    };
  }

  private static boolean isIn(Slab slab, FixedObject object) {
    return slab.region().contains(object.shape().ring().box().centre());
  }
}
