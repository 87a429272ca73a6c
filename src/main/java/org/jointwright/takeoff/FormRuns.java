package org.jointwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.joint.Meeting;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;

/** The edges that boards hold: those against open ground or asphalt, and between two slabs once. */
final class FormRuns {
  /** Less is no board, inches. */
  private static final double SHORTEST = 1;

  /**
   * A stretch of boards.
   *
   * @param length how long, inches
   * @param high as high as its slab is thick, the thicker of two
   * @param isBent whether it follows an arc
   */
  record Run(double length, Length high, boolean isBent) {}

  private FormRuns() {}

  static List<Run> of(Plan plan) {
    List<Run> runs = new ArrayList<>();
    List<Meeting> meetings = Meeting.of(plan);
    for (Slab slab : plan.slabs()) {
      List<Edge> edges = slab.outline().ring().edges();
      for (int i = 0; i < edges.size(); i++) {
        if (isFormed(slab.edge(i).against())) {
          add(runs, edges.get(i), edges.get(i).length() - met(meetings, slab, i), slab.thickness());
        }
      }
      for (Opening o : slab.openings()) {
        List<Edge> inner = o.outline().ring().edges();
        for (int i = 0; i < inner.size(); i++) {
          if (isFormed(o.edge(i).against())) {
            add(runs, inner.get(i), inner.get(i).length(), slab.thickness());
          }
        }
      }
    }
    // Whatever the plan says of such an edge, the slab that is poured first needs a board there.
    for (Meeting m : meetings) {
      Length first = plan.slab(m.first()).orElseThrow().thickness();
      Length second = plan.slab(m.second()).orElseThrow().thickness();
      Length high = first.compareTo(second) > 0 ? first : second;
      add(runs, m.stretch(), m.stretch().length(), high);
    }
    return runs;
  }

  /** How much of an edge of a slab is along other slabs, inches. */
  private static double met(List<Meeting> meetings, Slab slab, int edge) {
    return meetings.stream()
        .filter(
            m ->
                (m.first().equals(slab.id()) && m.firstEdge() == edge)
                    || (m.second().equals(slab.id()) && m.secondEdge() == edge))
        .mapToDouble(m -> m.stretch().length())
        .sum();
  }

  private static void add(List<Run> runs, Edge edge, double length, Length high) {
    if (length >= SHORTEST) {
      runs.add(new Run(length, high, edge instanceof Arc));
    }
  }

  private static boolean isFormed(Against against) {
    return switch (against) {
      case OPEN, ASPHALT -> true;
      case BUILDING, CONCRETE, STREET -> false;
    };
  }
}
