package org.jointwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.SlabLayout;
import org.jointwright.layout.boxout.BoxOuts;
import org.jointwright.layout.search.Effort;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.ByHand;
import org.jointwright.shape.Path;

/** Lays the joints of a plan. */
public final class LayoutEngine {
  private LayoutEngine() {}

  /**
   * The plan with its joints and box-outs laid anew, and the panels they cut. What the user locked
   * stays. Where no layout meets every rule, the least broken one. Where a pour is limited, some of
   * the lines are construction joints.
   */
  public static Layout lay(Plan plan) {
    return lay(plan, Set.of(), Effort.FULL, () -> true);
  }

  /**
   * The same, found with a fraction of the effort: what a window shows while a hand drags. It
   * breaks no more rules where it can be helped, but may be dearer.
   */
  public static Layout first(Plan plan) {
    return lay(plan, Set.of(), Effort.FIRST, () -> true);
  }

  /**
   * The pattern of a layout fitted to a changed plan, without any search: each line stands on what
   * it stood on, on the same corners, meeting the same features, dividing what lies between as it
   * did, at whole inches where it stood at them. On an unchanged plan the same layout. Quick enough
   * for each frame while a hand drags: ask it with the layout from before the drag.
   *
   * @param before a layout of the plan as it was
   * @param now the plan as it is, with what its user locked
   * @return empty where the pattern does not fit any more: a line lost what it stood on, a panel
   *     would vanish, more would be broken than before, or the user asked for something else
   */
  public static Optional<Layout> refit(Layout before, Plan now) {
    return refit(before, now, ByHand.NONE);
  }

  /**
   * The same, but a slab that a hand has laid goes along with its shape though more is broken then.
   */
  public static Optional<Layout> refit(Layout before, Plan now, ByHand hand) {
    return Keeper.refit(before, now, hand.following());
  }

  /**
   * The plan laid anew, but by the pattern of the layout before where that still fits, breaks no
   * more than a pattern searched for now and costs at most 3 % more (common practice, no source):
   * what a window shows when a hand that dragged rests.
   *
   * @param before a layout of the plan as it was
   * @param now the plan as it is, with what its user locked
   */
  public static Layout relay(Layout before, Plan now) {
    return relay(before, now, () -> true).orElseThrow();
  }

  /** The same, unless it is told to stop: empty once {@code goOn} has said no. */
  public static Optional<Layout> relay(Layout before, Plan now, BooleanSupplier goOn) {
    return relay(before, now, ByHand.NONE, goOn);
  }

  /**
   * The same, but the joints of slabs that a hand has laid stay as they stand in the plan, and go
   * along with a slab whose shape has changed as long as its pattern fits, whatever that costs.
   */
  public static Optional<Layout> relay(Layout before, Plan now, ByHand hand, BooleanSupplier goOn) {
    Optional<Layout> kept =
        refit(before, now, hand)
            .filter(k -> hand.standing().stream().allMatch(s -> stands(s, now, k)));
    if (kept.isPresent() && !hand.following().isEmpty()) {
      return kept;
    }
    return lay(now, hand.standing(), goOn)
        .map(anew -> kept.filter(k -> Rivals.stays(k, anew)).orElse(anew));
  }

  /** Whether what is cut in a slab runs in a layout where it runs in the plan. */
  private static boolean stands(String slab, Plan plan, Layout layout) {
    return layout.slab(slab).map(s -> cut(s.slab())).equals(plan.slab(slab).map(s -> cut(s)));
  }

  private static Set<Path> cut(Slab slab) {
    Set<Path> paths = new HashSet<>();
    for (Joint j : slab.joints()) {
      if (j.kind() == JointKind.CONTRACTION) {
        paths.add(j.path());
      }
    }
    return paths;
  }

  /**
   * The same as {@link #lay(Plan)}, unless it is told to stop.
   *
   * @param goOn asked at each step of the search; it decides on nothing but whether to go on
   * @return empty once {@code goOn} has said no
   */
  public static Optional<Layout> lay(Plan plan, BooleanSupplier goOn) {
    return lay(plan, Set.of(), goOn);
  }

  /**
   * The same, but some slabs keep their joints and box-outs as they stand in the plan, whatever
   * they break: those that a hand has laid. Only filler and the joints along edges are looked at
   * anew.
   *
   * @param standing the ids of these slabs
   */
  public static Optional<Layout> lay(Plan plan, Set<String> standing, BooleanSupplier goOn) {
    return unlessStopped(plan, standing, Effort.FULL, goOn);
  }

  /** The same, found with a fraction of the effort. */
  public static Optional<Layout> first(Plan plan, Set<String> standing, BooleanSupplier goOn) {
    return unlessStopped(plan, standing, Effort.FIRST, goOn);
  }

  /** The same as {@link #first(Plan)}, unless it is told to stop. */
  public static Optional<Layout> first(Plan plan, BooleanSupplier goOn) {
    return first(plan, Set.of(), goOn);
  }

  private static Optional<Layout> unlessStopped(
      Plan plan, Set<String> standing, Effort effort, BooleanSupplier goOn) {
    try {
      return Optional.of(lay(plan, standing, effort, goOn));
    } catch (CancellationException stopped) {
      return Optional.empty();
    }
  }

  private static Layout lay(Plan plan, Set<String> standing, Effort effort, BooleanSupplier goOn) {
    Map<String, Slab> laid = new LinkedHashMap<>();
    for (Slab slab : order(plan)) {
      if (standing.contains(slab.id())) {
        laid.put(slab.id(), standing(slab));
      }
    }
    for (Slab slab : order(plan)) {
      if (standing.contains(slab.id())) {
        continue;
      }
      Neighbours neighbours = new Neighbours(plan, slab, List.copyOf(laid.values()));
      laid.put(slab.id(), new SlabLayer(plan, slab, neighbours, effort, goOn).lay());
    }
    List<Slab> slabs = plan.slabs().stream().map(s -> laid.getOrDefault(s.id(), s)).toList();
    return stopped(finished(plan.withSlabs(slabs)), goOn);
  }

  /** A slab without what is laid along its edges, for that is looked at anew. */
  private static Slab standing(Slab slab) {
    List<Joint> joints = new ArrayList<>();
    for (Joint j : slab.joints()) {
      boolean isAnew =
          !j.locked() && (j.purpose() == Purpose.SHARED_EDGE || j.kind() == JointKind.ISOLATION);
      if (!isAnew) {
        joints.add(j);
      }
    }
    joints.addAll(BoxOuts.filler(slab.boxOuts(), slab));
    return slab.withLaid(joints, slab.boxOuts());
  }

  /** The largest slab chooses first; the smaller ones beside it line up with it. */
  static List<Slab> order(Plan plan) {
    // A window that opens on blank paper need not wait for an order of nothing.
    if (plan.slabs().size() < 2) {
      return plan.slabs();
    }
    List<Slab> order = new ArrayList<>(plan.slabs());
    order.sort(
        Comparator.comparing((Slab s) -> s.lockedJoints().isEmpty())
            .thenComparingDouble(s -> -s.region().area()));
    return order;
  }

  /** With the joints along edges, the joints numbered, and the panels they cut. */
  static Layout finished(Plan plan) {
    return Layouts.of(plan.withSlabs(EdgeJoints.addTo(plan)));
  }

  /** With construction joints where the limits of a pour ask for them. */
  static Layout stopped(Layout layout) {
    return stopped(layout, () -> true);
  }

  private static Layout stopped(Layout layout, BooleanSupplier goOn) {
    Layout stopped = layout;
    if (layout.plan().pour().isLimited()) {
      for (SlabLayout s : layout.slabs()) {
        Slab slab = PourStops.stopped(s, layout.plan().pour(), goOn);
        stopped = slab.equals(s.slab()) ? stopped : Layouts.with(stopped, slab);
      }
    }
    return stopped;
  }

  /**
   * Layouts of a slab that differ, three at most: the one with the fewest feet to cut first, then
   * the one with the squarest panels, then those in line with one of its edges. None of them breaks
   * more than the first.
   *
   * @param slab the slab's id, one of the plan's
   * @param goOn asked at each step of the search; once it says no, there are the layouts found by
   *     then
   */
  public static List<Offer> choices(Plan plan, String slab, BooleanSupplier goOn) {
    return new Offers(plan, plan.slab(slab).orElseThrow(), goOn).find();
  }
}
