package org.jointwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Against;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** Several layouts of one slab that differ, each best at something. */
final class Offers {
  /** More are not offered. */
  private static final int MOST = 3;

  /** So many directions are tried. */
  private static final int DIRECTIONS = 2;

  /** Joints whose ends are all nearer than this to another's are the same, inches. */
  private static final double SAME = 1;

  /** The sine of two degrees: what is off by less runs along. */
  private static final double ALONG = 0.035;

  private final Plan plan;
  private final Slab slab;
  private final BooleanSupplier goOn;
  private final List<Offer> offers = new ArrayList<>();

  Offers(Plan plan, Slab slab, BooleanSupplier goOn) {
    this.plan = plan;
    this.slab = slab;
    this.goOn = goOn;
  }

  /** The shortest first, then what differs from all before it. */
  List<Offer> find() {
    add(Preference.SHORTEST);
    add(Preference.Overall.SQUAREST);
    if (!offers.isEmpty()) {
      directions().stream().limit(DIRECTIONS).forEach(e -> add(new Preference.LinedUpWith(e)));
    }
    return List.copyOf(offers);
  }

  private void add(Preference preference) {
    if (offers.size() == MOST) {
      return;
    }
    Slab asked = slab.withJointing(slab.jointing().withPreference(preference));
    List<Slab> slabs =
        plan.slabs().stream().map(s -> s.id().equals(slab.id()) ? asked : s).toList();
    Optional<Layout> laid = LayoutEngine.lay(plan.withSlabs(slabs), goOn);
    if (laid.isEmpty()) {
      return;
    }
    Layout layout = laid.get();
    List<Joint> joints = cut(layout);
    if (offers.stream().noneMatch(o -> isSame(cut(o.layout()), joints))) {
      offers.add(new Offer(preference, layout));
    }
  }

  private List<Joint> cut(Layout layout) {
    return layout.slab(slab.id()).orElseThrow().joints().stream()
        .filter(j -> j.kind() == JointKind.CONTRACTION)
        .toList();
  }

  private static boolean isSame(List<Joint> some, List<Joint> others) {
    return some.size() == others.size()
        && some.stream().allMatch(j -> others.stream().anyMatch(k -> isSame(j, k)));
  }

  private static boolean isSame(Joint a, Joint b) {
    return a.path().distance(b.path().start()) <= SAME
        && a.path().distance(b.path().end()) <= SAME
        && b.path().distance(a.path().start()) <= SAME
        && b.path().distance(a.path().end()) <= SAME;
  }

  /**
   * The edges whose direction some joint of the shortest layout does not follow: those with
   * something to meet first, then those along a building, then by length; one of each direction.
   */
  private List<Integer> directions() {
    List<Edge> edges = slab.outline().ring().edges();
    List<Integer> numbers = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      numbers.add(i);
    }
    numbers.sort(
        Comparator.comparing((Integer i) -> slab.edge(i).features().isEmpty())
            .thenComparing(i -> slab.edge(i).against() != Against.BUILDING)
            .thenComparingDouble(i -> -edges.get(i).length())
            .thenComparingInt(i -> i));
    List<Integer> kept = new ArrayList<>();
    List<Joint> shortest = cut(offers.getFirst().layout());
    for (int i : numbers) {
      Edge e = edges.get(i);
      boolean known = kept.stream().anyMatch(k -> runsAlong(edges.get(k), e));
      boolean followed =
          shortest.stream()
              .flatMap(j -> j.path().edges().stream())
              .allMatch(j -> j instanceof Arc || runsAlong(j, e));
      if (!(e instanceof Arc) && !known && !followed) {
        kept.add(i);
      }
    }
    return kept;
  }

  /** Whether two straight edges are parallel or square to each other. */
  private static boolean runsAlong(Edge a, Edge b) {
    Point u = a.direction(0.5);
    Point v = b.direction(0.5);
    return Math.min(Math.abs(u.cross(v)), Math.abs(u.dot(v))) <= ALONG;
  }
}
