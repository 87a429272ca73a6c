package org.jointwright.reason;

import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Purpose;

/**
 * Why a joint is where it is.
 *
 * @param slab the id of the slab
 * @param joint the id of the joint
 * @param origins what it takes its place from, the weightiest first
 * @param without what would be if it alone were left out
 * @param withoutLine what would be if the whole line it is a part of were; empty where it is alone
 */
public record Reason(
    String slab,
    String joint,
    List<Origin> origins,
    Without without,
    Optional<Without> withoutLine) {
  /** Copies the list. */
  public Reason {
    origins = List.copyOf(origins);
  }

  /** What it is there for, in the plan's own words. */
  public Purpose purpose() {
    Purpose found = Purpose.SPACING;
    for (Origin o : origins) {
      Purpose of =
          switch (o) {
            case Origin.AlongEdge e -> Purpose.ISOLATION;
            case Origin.RoundObject e -> Purpose.ISOLATION;
            case Origin.SlabsMeet e -> Purpose.SHARED_EDGE;
            case Origin.CornerTip e -> Purpose.CORNER;
            case Origin.BoxOutCorner e -> Purpose.BOX_OUT;
            case Origin.BoxOutSide e -> Purpose.BOX_OUT;
            case Origin.InsideCorner e -> Purpose.INSIDE_CORNER;
            default -> Purpose.SPACING;
          };
      if (found == Purpose.SPACING || of == Purpose.BOX_OUT) {
        found = of == Purpose.SPACING ? found : of;
      }
    }
    return found;
  }

  /** Where it would likely crack without it; from the whole line where that tells more. */
  public List<LikelyCrack> cracks() {
    List<LikelyCrack> alone = without.cracks();
    return alone.isEmpty() ? withoutLine.map(Without::cracks).orElse(List.of()) : alone;
  }
}
