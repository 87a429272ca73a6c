package org.jointwright.fix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.SplitEdit;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Segment;
import org.jointwright.shape.jts.Overlap;

/**
 * Moves a slab off another that it lies over, square to a side of that and until both touch, or
 * cuts off what lies over.
 */
final class OffOther implements Remedy {
  /** Points nearer to a side are on it, inches. */
  private static final double ON = 0.05;

  @Override
  public List<Fix> proposals(Broken broken) {
    List<Fix> fixes = new ArrayList<>();
    Slab own = broken.slab();
    for (Slab other : broken.plan().slabs()) {
      if (!other.id().equals(own.id())) {
        Overlap.of(own.region(), other.region(), Tolerance.LENGTH_INCHES)
            .filter(o -> o.widest().centre().distance(broken.finding().at()) <= 1)
            .ifPresent(o -> off(own, other, o, fixes));
      }
    }
    return fixes;
  }

  private static void off(Slab own, Slab other, Overlap overlap, List<Fix> fixes) {
    List<Segment> sides =
        overlap.sides(other.region()).stream()
            .sorted(Comparator.comparingDouble(overlap::depth))
            .toList();
    for (Segment side : sides) {
      double by = overlap.depth(side);
      Point out = side.direction(0).left().times(-by);
      fixes.add(
          Fix.of(
              "fix.apart.move",
              "fix.did.apart",
              List.of(own.id(), Length.inches(by), other.id()),
              new SlabEdit.MoveSlab(own.id(), out)));
    }
    for (Segment side : sides) {
      cut(own, side)
          .ifPresent(
              c ->
                  fixes.add(
                      Fix.of(
                          "fix.apart.cut",
                          "fix.did.cutOff",
                          List.of(own.id(), other.id()),
                          new SplitEdit.CutOff(own.id(), c.start(), c.end()))));
    }
  }

  /** The cut along a side right across a slab that has no opening there. */
  private static Optional<Segment> cut(Slab own, Segment side) {
    Region region = own.region();
    List<Point> ends = new ArrayList<>();
    for (Edge e : region.outer().edges()) {
      for (Crossing c : Crossing.of(side, e)) {
        if (ends.stream().noneMatch(p -> p.distance(c.at()) <= ON)) {
          ends.add(c.at());
        }
      }
    }
    boolean isFree =
        region.holes().stream()
            .flatMap(h -> h.edges().stream())
            .allMatch(e -> Crossing.of(side, e).isEmpty());
    return ends.size() == 2 && isFree
        ? Optional.of(new Segment(ends.getFirst(), ends.getLast()))
        : Optional.empty();
  }
}
