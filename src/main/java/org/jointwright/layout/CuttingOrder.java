package org.jointwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** Names for the joints of a slab in the order in which they are made. */
final class CuttingOrder {
  private CuttingOrder() {}

  /**
   * Contraction joints first, all of one direction after each other from one side to the other;
   * then construction joints, then filler.
   */
  static List<Joint> inCuttingOrder(Slab slab, List<Joint> joints) {
    List<Joint> sorted = new ArrayList<>(joints);
    sorted.sort(
        Comparator.comparing(Joint::kind)
            .thenComparingLong(j -> direction(j.path().edges().getFirst()))
            .thenComparingLong(j -> Math.round(offset(j.path().edges().getFirst())))
            .thenComparingDouble(j -> j.path().start().x() + j.path().start().y()));
    List<Joint> numbered = new ArrayList<>();
    for (Joint j : sorted) {
      numbered.add(j.withId("J" + (numbered.size() + 1)));
    }
    return numbered;
  }

  /** Directions in classes of 15 degrees, arcs last. */
  private static long direction(Edge edge) {
    if (edge instanceof Arc) {
      return 99;
    }
    double degrees = Math.toDegrees(edge.direction(0).angle());
    return Math.floorMod(Math.round(degrees / 15), 12);
  }

  private static double offset(Edge edge) {
    Point u = edge.direction(0);
    Point same = u.x() < -1e-9 || (Math.abs(u.x()) <= 1e-9 && u.y() < 0) ? u.times(-1) : u;
    return -same.left().dot(edge.start());
  }
}
