package org.jointwright.fix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jointwright.fix.apart.CutAway;
import org.jointwright.fix.apart.WaysOff;
import org.jointwright.joint.Meeting;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;
import org.jointwright.shape.jts.Overlap;

/**
 * Moves a slab off another that it lies over until both touch, cuts off what lies over, or leaves
 * room for it where it lies amid the other. What pulls it from what it stands against comes last.
 */
final class OffOther implements Remedy {
  /** A move that leans less from a side goes along it: the sine. */
  private static final double ALONG = 0.02;

  @Override
  public List<Fix> proposals(Broken broken) {
    List<Fix> fixes = new ArrayList<>();
    Slab own = broken.slab();
    for (Slab other : broken.plan().slabs()) {
      if (!other.id().equals(own.id())) {
        Overlap.of(own.region(), other.region(), Tolerance.LENGTH_INCHES)
            .filter(o -> o.widest().centre().distance(broken.finding().at()) <= 1)
            .ifPresent(o -> fixes.addAll(off(broken.plan(), own, other, o)));
      }
    }
    return fixes;
  }

  private static List<Fix> off(Plan plan, Slab own, Slab other, Overlap overlap) {
    List<Fix> first = new ArrayList<>();
    List<Fix> last = new ArrayList<>();
    for (Point by : WaysOff.of(own, other, overlap)) {
      Fix move =
          Fix.of(
              "fix.apart.move",
              "fix.did.apart",
              List.of(own.id(), Length.inches(by.norm()), other.id()),
              new SlabEdit.MoveSlab(own.id(), by));
      if (pulls(plan, own, by)) {
        last.add(move);
      } else {
        first.add(move);
      }
    }
    // Whoever does not want it moved finds the cut next.
    cut(plan, own, other, overlap).ifPresent(f -> first.add(Math.min(1, first.size()), f));
    room(plan, own, other).ifPresent(first::addFirst);
    first.addAll(last);
    return first;
  }

  /** Along one side, or along all: what leaves most, so that no part beside the other is lost. */
  private static Optional<Fix> cut(Plan plan, Slab own, Slab other, Overlap overlap) {
    List<Segment> sides = overlap.sides(other.region());
    List<List<Segment>> ways = new ArrayList<>(List.of(sides));
    sides.forEach(s -> ways.add(List.of(s)));
    return ways.stream()
        .flatMap(w -> CutAway.of(plan, own, other, w).stream())
        .max(Comparator.comparingDouble(e -> area(e.applyTo(plan))))
        .map(e -> Fix.of("fix.apart.cut", "fix.did.cutOff", List.of(own.id(), other.id()), e));
  }

  private static double area(Plan plan) {
    return plan.slabs().stream().mapToDouble(s -> s.region().area()).sum();
  }

  /**
   * Room left in the other slab for one that lies wholly amid it, where nothing else does; with
   * filler round it, for what is poured there holds the slab as old concrete would.
   */
  private static Optional<Fix> room(Plan plan, Slab own, Slab other) {
    Ring ring = own.outline().ring();
    Stream<Ring> there =
        Stream.concat(
            Stream.concat(
                Stream.of(other.outline().ring()),
                other.openings().stream().map(o -> o.outline().ring())),
            plan.fixed().stream()
                .filter(f -> f.slab().equals(other.id()))
                .map(f -> f.shape().ring()));
    boolean isAmid =
        other.region().contains(ring.vertices().getFirst())
            && there.allMatch(r -> isClear(ring, r));
    return isAmid
        ? Optional.of(
            Fix.of(
                "fix.apart.room",
                "fix.did.room",
                List.of(own.id(), other.id()),
                new SlabEdit.AddOpening(other.id(), opening(own.outline()))))
        : Optional.empty();
  }

  private static Opening opening(Outline outline) {
    Map<Integer, EdgeSetting> edges = new TreeMap<>();
    for (int i = 0; i < outline.vertices().size(); i++) {
      edges.put(i, EdgeSetting.against(Against.CONCRETE));
    }
    return new Opening(outline, edges, Kept.NOTHING);
  }

  private static boolean isClear(Ring own, Ring other) {
    return other.vertices().stream()
            .noneMatch(p -> own.contains(p) || own.distance(p) <= Tolerance.LENGTH_INCHES)
        && own.vertices().stream().allMatch(p -> other.distance(p) > Tolerance.LENGTH_INCHES)
        && own.edges().stream()
            .allMatch(e -> other.edges().stream().allMatch(o -> Crossing.of(e, o).isEmpty()));
  }

  /** Whether a move leaves what the slab stands against, or goes into it. */
  private static boolean pulls(Plan plan, Slab slab, Point by) {
    List<Edge> edges = slab.outline().ring().edges();
    List<Meeting> meetings = Meeting.of(plan);
    for (int i = 0; i < edges.size(); i++) {
      Against against = slab.edge(i).against();
      int side = i;
      boolean isHeld =
          (against != Against.OPEN && against != Against.CONCRETE)
              || meetings.stream()
                  .anyMatch(
                      m ->
                          (m.first().equals(slab.id()) && m.firstEdge() == side)
                              || (m.second().equals(slab.id()) && m.secondEdge() == side));
      if (isHeld && Math.abs(edges.get(i).direction(0.5).cross(by.unit())) > ALONG) {
        return true;
      }
    }
    return false;
  }
}
