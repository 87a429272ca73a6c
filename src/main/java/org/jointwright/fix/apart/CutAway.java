package org.jointwright.fix.apart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Sizes;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.SplitEdit;
import org.jointwright.plan.edit.Together;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Segment;
import org.jointwright.shape.jts.Overlap;

/** A slab parted along sides of another, and what lies over that taken out. */
public final class CutAway {
  /** Points nearer to a side are on it, inches. */
  private static final double ON = 0.05;

  private final String id;
  private final Region other;
  private final List<Edit> edits = new ArrayList<>();
  private Plan plan;
  private List<String> pieces;

  private CutAway(Plan plan, Slab own, Slab other) {
    this.plan = plan;
    id = own.id();
    this.other = other.region();
    pieces = List.of(id);
  }

  /**
   * What cuts away all that lies over the other slab; one cut for a slab that ends in the other,
   * two for one that runs across it, of which both ends stay. Empty where none of it would be left
   * or straight cuts along these sides do not part it.
   *
   * @param sides the sides of the other slab that bound what lies in both
   */
  public static Optional<Edit> of(Plan plan, Slab own, Slab other, List<Segment> sides) {
    CutAway cut = new CutAway(plan, own, other);
    sides.forEach(cut::along);
    return cut.withoutOver();
  }

  private void along(Segment side) {
    List<String> now = new ArrayList<>(pieces);
    for (String piece : pieces) {
      Slab slab = plan.slab(piece).orElseThrow();
      across(slab, side)
          .map(c -> new SplitEdit.Split(piece, c.start(), c.end()))
          .ifPresent(e -> made(e).forEach(now::add));
    }
    pieces = List.copyOf(now);
  }

  /** The slabs that are new after one edit more. */
  private List<String> made(Edit edit) {
    Plan before = plan;
    plan = edit.applyTo(plan);
    edits.add(edit);
    return plan.slabs().stream().map(Slab::id).filter(s -> before.slab(s).isEmpty()).toList();
  }

  private Optional<Edit> withoutOver() {
    List<String> over = pieces.stream().filter(this::isOver).toList();
    List<String> left = pieces.stream().filter(p -> !over.contains(p)).toList();
    if (edits.isEmpty() || over.isEmpty() || left.isEmpty()) {
      return Optional.empty();
    }
    over.forEach(p -> edits.add(new SlabEdit.Remove(p)));
    if (over.contains(id)) {
      left.stream()
          .max(Comparator.comparingDouble(p -> plan.slab(p).orElseThrow().region().area()))
          .ifPresent(p -> edits.add(new SlabEdit.Rename(p, id)));
    }
    return Optional.of(new Together(edits));
  }

  private boolean isOver(String piece) {
    Region region = plan.slab(piece).orElseThrow().region();
    return Overlap.of(region, other, Tolerance.LENGTH_INCHES).isPresent();
  }

  /** The cut along a side right across a slab that has no opening there. */
  private static Optional<Segment> across(Slab slab, Segment side) {
    Region region = slab.region();
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
    if (ends.size() != 2 || !isFree) {
      return Optional.empty();
    }
    Point middle = ends.getFirst().towards(ends.getLast(), 0.5);
    return region.contains(middle) && region.outer().distance(middle) > Sizes.CLEAR
        ? Optional.of(new Segment(ends.getFirst(), ends.getLast()))
        : Optional.empty();
  }
}
