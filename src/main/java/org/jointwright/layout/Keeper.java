package org.jointwright.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.Placement;
import org.jointwright.joint.Placements;
import org.jointwright.joint.SlabLayout;
import org.jointwright.layout.boxout.Around;
import org.jointwright.layout.boxout.BoxOuts;
import org.jointwright.layout.keep.AsDraft;
import org.jointwright.layout.keep.Asked;
import org.jointwright.layout.keep.Refit;
import org.jointwright.layout.keep.SamePattern;
import org.jointwright.layout.piece.Ground;
import org.jointwright.layout.piece.Limits;
import org.jointwright.layout.piece.Piece;
import org.jointwright.layout.search.Score;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;

/** Fits the pattern of a layout to a changed plan, slab by slab. */
final class Keeper {
  /** What is broken by less more than before is not broken more. */
  private static final double HAIR = 1e-9;

  /** Corners that moved farther may have taken a box-out to another edge, inches. */
  private static final double FARTHEST = 12;

  /** A box-out centred on an edge moves hardly farther than the edge does, inches. */
  private static final double HALF = 0.5;

  /** The plan itself as a bench: fitting decides no tie that where a slab stands could tip. */
  private static final Bench PLAN = new Bench(new Point(0, 0));

  private final Layout before;
  private final Plan now;
  private final boolean marked;

  /** Slabs whose pattern stays though more is broken then. */
  private final Set<String> following;

  /** The box-outs of each slab now: the same whether lines stand at whole inches or not. */
  private final Map<String, List<BoxOut>> boxes;

  private final Map<String, Slab> old = new LinkedHashMap<>();
  private final Map<String, Slab> laid = new LinkedHashMap<>();
  private final Map<String, List<Refit.Kept>> kept = new LinkedHashMap<>();

  private Keeper(
      Layout before,
      Plan now,
      Set<String> following,
      boolean marked,
      Map<String, List<BoxOut>> boxes) {
    this.before = before;
    this.now = now;
    this.following = following;
    this.marked = marked;
    this.boxes = boxes;
  }

  /**
   * The layout before on the plan now; empty where its pattern no longer fits. Where a limit leaves
   * no room for whole inches, lines stand where they divide best.
   *
   * @param following the ids of slabs whose pattern stays though it breaks more than before: a hand
   *     has laid them
   */
  static Optional<Layout> refit(Layout before, Plan now, Set<String> following) {
    Keeper marked = new Keeper(before, now, following, /* marked= */ true, new HashMap<>());
    return marked.fitted(Map.of()).or(() -> marked.unmarked().fitted(marked.laid));
  }

  private Keeper unmarked() {
    return new Keeper(before, now, following, /* marked= */ false, boxes);
  }

  /**
   * The layout before on the plan now.
   *
   * @param tried slabs as they came out before and did not fit
   */
  private Optional<Layout> fitted(Map<String, Slab> tried) {
    for (Slab slab : LayoutEngine.order(now)) {
      Optional<Slab> was = before.plan().slab(slab.id());
      if (was.isEmpty()
          || !was.get().jointing().preference().equals(slab.jointing().preference())
          || !fit(was.get(), slab)) {
        return Optional.empty();
      }
    }
    if (laid.equals(tried)) {
      return Optional.empty();
    }
    List<Slab> slabs = now.slabs().stream().map(s -> laid.getOrDefault(s.id(), s)).toList();
    Layout layout = LayoutEngine.finished(now.withSlabs(slabs));
    for (SlabLayout s : layout.slabs()) {
      if (!fits(s)) {
        return Optional.empty();
      }
    }
    return Optional.of(stopped(layout));
  }

  private boolean fit(Slab was, Slab slab) {
    List<BoxOut> boxed = boxes.computeIfAbsent(slab.id(), k -> boxes(was, slab));
    Asked asked =
        new Asked(
            was,
            slab,
            boxed,
            targets(before.plan(), was, old),
            targets(now, slab, laid),
            now.unit().isMetric(),
            marked);
    Optional<List<Refit.Kept>> fitted = Refit.of(asked);
    if (fitted.isEmpty()) {
      return false;
    }
    List<Joint> joints = new ArrayList<>(slab.lockedJoints());
    fitted.get().stream().map(Refit.Kept::now).filter(j -> !j.locked()).forEach(joints::add);
    joints.addAll(BoxOuts.filler(boxed, slab));
    old.put(was.id(), was);
    laid.put(slab.id(), slab.withLaid(joints, boxed));
    kept.put(slab.id(), fitted.get());
    return true;
  }

  private static List<Point> targets(Plan plan, Slab slab, Map<String, Slab> laid) {
    Neighbours neighbours = new Neighbours(plan, slab, List.copyOf(laid.values()));
    return new Score(neighbours.meetings(PLAN), Seen.from(plan, slab, PLAN)).targets();
  }

  /** The box-outs of a slab, of the kinds they were. */
  private List<BoxOut> boxes(Slab was, Slab slab) {
    boolean metric = now.unit().isMetric();
    Plan then = before.plan();
    if (was.outline().equals(slab.outline())
        && was.openings().equals(slab.openings())
        && then.fixedIn(was.id()).equals(now.fixedIn(slab.id()))) {
      return was.boxOuts();
    }
    double moved = moved(was, slab);
    return (moved > FARTHEST || !then.fixedIn(was.id()).equals(now.fixedIn(slab.id()))
            ? Optional.<List<BoxOut>>empty()
            : BoxOuts.like(was.boxOuts(), slab, now.fixedIn(slab.id()), metric, moved + HALF))
        .orElseGet(() -> ofTheSameKind(was, slab, metric));
  }

  /** How far a corner of the outline moved at most, inches; endless where there are others. */
  private static double moved(Slab was, Slab slab) {
    List<Point> one = was.outline().ring().vertices();
    List<Point> other = slab.outline().ring().vertices();
    if (one.size() != other.size() || !was.openings().equals(slab.openings())) {
      return Double.POSITIVE_INFINITY;
    }
    double most = 0;
    for (int i = 0; i < one.size(); i++) {
      most = Math.max(most, one.get(i).distance(other.get(i)));
    }
    return most;
  }

  /** The box-outs that stand where those before stood in the order of their choices. */
  private List<BoxOut> ofTheSameKind(Slab was, Slab slab, boolean metric) {
    Plan then = before.plan();
    List<List<Around>> choices = BoxOuts.choices(was, then.fixedIn(was.id()), metric);
    List<BoxOut> found = new ArrayList<>();
    for (List<Around> ways : BoxOuts.choices(slab, now.fixedIn(slab.id()), metric)) {
      List<String> objects = ways.getFirst().objects();
      Around old =
          new Around(was.boxOuts().stream().filter(b -> objects.contains(b.fixed())).toList());
      List<Around> earlier =
          choices.stream()
              .filter(c -> c.getFirst().objects().equals(objects))
              .findFirst()
              .orElse(List.of());
      found.addAll(ways.get(Math.clamp(earlier.indexOf(old), 0, ways.size() - 1)).boxes());
    }
    return found;
  }

  /** Whether a slab's joints still part its panels as they did and break no more than before. */
  private boolean fits(SlabLayout layout) {
    SlabLayout was = before.slab(layout.slab().id()).orElseThrow();
    List<Refit.Kept> joints = kept.getOrDefault(layout.slab().id(), List.of());
    if (!SamePattern.is(was, layout, joints)) {
      return false;
    }
    Ground ground = ground(layout.slab());
    boolean sameZones = was.slab().keepClear().equals(layout.slab().keepClear());
    for (Refit.Kept k : joints) {
      boolean asked = !sameZones || !k.now().path().equals(k.before().path());
      if (asked && !k.now().locked() && ground.zones().bar(k.now().path().edges().getFirst())) {
        return false;
      }
    }
    double excess = excess(layout, ground);
    return following.contains(layout.slab().id())
        || excess <= HAIR
        || excess <= excess(was, ground(was.slab())) + HAIR;
  }

  private static Ground ground(Slab slab) {
    return Grounds.of(slab, slab.boxOuts(), Limits.of(slab), PLAN);
  }

  /** What the panels break, each weighted by its share of the area. */
  private static double excess(SlabLayout layout, Ground ground) {
    double total = 0;
    double sum = 0;
    for (Piece p : AsDraft.pieces(layout, ground, PLAN::in)) {
      total += p.area();
      sum += p.area() * p.faults().excess();
    }
    return total == 0 ? 0 : sum / total;
  }

  /** With the pours stopped where they were, or anew where that no longer keeps the limits. */
  private Layout stopped(Layout layout) {
    boolean same = now.pour().equals(before.plan().pour());
    for (SlabLayout s : layout.slabs()) {
      for (Placement p : Placements.of(s)) {
        same &= !now.pour().isLimited() || p.isWithin(now.pour());
      }
    }
    if (same) {
      return layout;
    }
    Layout free = layout;
    for (SlabLayout s : layout.slabs()) {
      List<Joint> joints = s.joints().stream().map(Keeper::sawn).toList();
      if (!joints.equals(s.joints())) {
        Slab slab = s.slab();
        free =
            Layouts.with(
                free, slab.withLaid(CuttingOrder.inCuttingOrder(slab, joints), slab.boxOuts()));
      }
    }
    return LayoutEngine.stopped(free);
  }

  private static Joint sawn(Joint j) {
    return !j.locked() && j.purpose() == Purpose.POUR
        ? Joint.of(j.id(), JointKind.CONTRACTION, j.path(), Purpose.SPACING)
        : j;
  }
}
