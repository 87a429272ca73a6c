package org.jointwright.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.LetteredCorner;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Tape;
import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Segment;

/**
 * The sides of slabs by the letters of their corners, as the cut sheet and the window name them.
 */
public final class Sides {
  private Sides() {}

  /**
   * The letters at the ends of an edge, or of the side that it is a part of, as in “A–B”; empty
   * where it has none.
   */
  public static String letters(Plan plan, Edge edge) {
    return letters(Lettering.of(plan), edge);
  }

  /** The letters at the ends of edges, one for each. */
  public static List<String> letters(Plan plan, List<Edge> edges) {
    Lettering lettering = Lettering.of(plan);
    return edges.stream().map(e -> letters(lettering, e)).toList();
  }

  private static String letters(Lettering lettering, Edge edge) {
    Optional<LetteredCorner> from = lettering.cornerAt(edge.start());
    Optional<LetteredCorner> to = lettering.cornerAt(edge.end());
    if (from.isPresent() && to.isPresent()) {
      return from.get().letter() + "–" + to.get().letter();
    }
    return lettering.tapesAt(edge.at(0.5), Lettering.SAME_PLACE).stream()
        .findFirst()
        .map(Tape::name)
        .orElse("");
  }

  /**
   * The straight edges of slabs’ outlines that run between two letters, one for each slab that has
   * one; of a side in several pieces the longest.
   *
   * @param side two letters with a dash between them, in either order, in either case
   */
  public static List<Ref> named(Plan plan, String side) {
    Lettering lettering = Lettering.of(plan);
    String wanted = inOrder(side);
    List<Ref> found = new ArrayList<>();
    for (Slab slab : plan.slabs()) {
      longest(slab, wanted, lettering).ifPresent(i -> found.add(Ref.outline(slab.id(), i)));
    }
    return found;
  }

  /** The names of all straight sides of slabs’ outlines, in the order of the plan. */
  public static List<String> names(Plan plan) {
    Lettering lettering = Lettering.of(plan);
    return plan.slabs().stream()
        .flatMap(s -> s.outline().ring().edges().stream())
        .filter(e -> e instanceof Segment)
        .map(e -> letters(lettering, e))
        .filter(n -> !n.isEmpty())
        .distinct()
        .toList();
  }

  private static Optional<Integer> longest(Slab slab, String wanted, Lettering lettering) {
    List<Edge> edges = slab.outline().ring().edges();
    int best = -1;
    for (int i = 0; i < edges.size(); i++) {
      if (edges.get(i) instanceof Segment
          && inOrder(letters(lettering, edges.get(i))).equals(wanted)
          && (best < 0 || edges.get(i).length() > edges.get(best).length())) {
        best = i;
      }
    }
    return best < 0 ? Optional.empty() : Optional.of(best);
  }

  /** The same for A-B and b–a; what is no pair of letters stays as it is. */
  private static String inOrder(String side) {
    String[] ends = side.strip().toUpperCase(java.util.Locale.ROOT).split("\\s*[-–]\\s*", -1);
    if (ends.length != 2) {
      return side;
    }
    return ends[0].compareTo(ends[1]) <= 0 ? ends[0] + "–" + ends[1] : ends[1] + "–" + ends[0];
  }
}
