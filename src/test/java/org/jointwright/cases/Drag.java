package org.jointwright.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.SelfCrossing;

/**
 * A corner pulled straight on, a step at a time.
 *
 * @param from the plan as it was
 * @param corner which corner
 * @param across whether square to the edge that leaves it rather than along it
 */
record Drag(Plan from, Ref corner, boolean across) {
  static final int STEPS = 48;

  /** How far the corner goes at each step, inches. */
  static final double STEP = 0.5;

  /** Edges nearer to each other than this leave no slab between them, inches. */
  private static final double APART = 1;

  /** Every corner of a plan along and across, outlines before openings. */
  static List<Drag> all(Plan plan) {
    List<Drag> found = new ArrayList<>();
    for (Slab s : plan.slabs()) {
      add(found, plan, s.id(), Ref.OUTLINE, s.outline());
      for (int i = 0; i < s.openings().size(); i++) {
        add(found, plan, s.id(), i, s.openings().get(i).outline());
      }
    }
    return found;
  }

  private static void add(List<Drag> found, Plan plan, String slab, int ring, Outline outline) {
    for (int i = 0; i < outline.vertices().size(); i++) {
      found.add(new Drag(plan, new Ref(slab, ring, i), false));
      found.add(new Drag(plan, new Ref(slab, ring, i), true));
    }
  }

  /** The plans of the steps, as far as the slab stays one. */
  List<Plan> plans() {
    List<Plan> found = new ArrayList<>();
    Point at = outline(from).vertices().get(corner.index()).at();
    for (int k = 1; k <= STEPS; k++) {
      Point to = at.plus(way().times(k * STEP));
      Plan plan = new SlabEdit.MoveCorner(corner, to).applyTo(from);
      if (!isWhole(plan.slab(corner.slab()).orElseThrow())) {
        return found;
      }
      found.add(plan);
    }
    return found;
  }

  private Outline outline(Plan plan) {
    Slab slab = plan.slab(corner.slab()).orElseThrow();
    return corner.ring() == Ref.OUTLINE
        ? slab.outline()
        : slab.openings().get(corner.ring()).outline();
  }

  /** Outwards at every other corner, else inwards: slabs grow and shrink. */
  private Point way() {
    Point u = outline(from).ring().edges().get(corner.index()).direction(0);
    Point out = across ? u.left().times(-1) : u.times(-1);
    return corner.index() % 2 == 0 ? out : out.times(-1);
  }

  private static boolean isWhole(Slab slab) {
    Ring outline = slab.outline().ring();
    List<Ring> all = new ArrayList<>(List.of(outline));
    slab.openings().stream().map(Opening::outline).map(Outline::ring).forEach(all::add);
    for (Ring ring : all) {
      Optional<SelfCrossing> crossing = SelfCrossing.of(ring, 0.01);
      if (crossing.isPresent() || ring.area() < 144) {
        return false;
      }
    }
    for (Ring opening : all.subList(1, all.size())) {
      for (Edge e : opening.edges()) {
        if (!outline.contains(e.at(0.5)) || outline.distance(e.start()) < APART) {
          return false;
        }
      }
    }
    return true;
  }
}
