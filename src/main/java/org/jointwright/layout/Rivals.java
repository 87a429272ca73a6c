package org.jointwright.layout;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.layout.keep.AsDraft;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Limits;
import org.jointwright.layout.search.Effort;
import org.jointwright.layout.search.Score;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;

/** Weighs a kept pattern against one that was searched for anew, both measured the same way. */
final class Rivals {
  /**
   * How much dearer the pattern that is there may be and stay: a crew that has seen it is not shown
   * another for pennies. Common practice, no source.
   */
  private static final double WORTH = 1.03;

  private static final double HAIR = 1e-6;

  /**
   * What a layout is worth.
   *
   * @param excess what its panels break, each weighted by its share of its slab's area
   * @param value the engine's value of it, ft; less is better
   */
  private record Value(double excess, double value) {}

  private Rivals() {}

  /** Whether the kept one stays: it breaks no more and costs hardly more. */
  static boolean stays(Layout kept, Layout anew) {
    Value a = value(kept);
    Value b = value(anew);
    return a.excess() <= b.excess() + HAIR && a.value() <= WORTH * b.value() + HAIR;
  }

  private static Value value(Layout layout) {
    Plan plan = layout.plan();
    List<Slab> laid = new ArrayList<>();
    double excess = 0;
    double value = 0;
    for (Slab ordered : LayoutEngine.order(plan)) {
      SlabLayout of = layout.slab(ordered.id()).orElseThrow();
      Slab slab = of.slab();
      Bench bench = Bench.at(slab.outline().ring().box());
      Neighbours neighbours = new Neighbours(plan, slab, List.copyOf(laid));
      Score score = new Score(neighbours.meetings(bench), Seen.from(plan, slab, bench));
      // Both are by the same taste: what it may cost was asked when it was laid.
      SlabLayer layer = new SlabLayer(plan, slab, neighbours, Effort.FIRST, () -> true);
      Score tasting = score.tasting(layer.taste(bench, Double.POSITIVE_INFINITY));
      Draft draft =
          AsDraft.of(of, Grounds.of(slab, slab.boxOuts(), Limits.of(slab), bench), bench::in);
      excess += draft.tally().excess();
      value += tasting.of(draft);
      laid.add(slab);
    }
    return new Value(excess, value);
  }
}
