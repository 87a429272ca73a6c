package org.jointwright.designer.state;

import java.util.List;
import org.jointwright.plan.Outline;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;

/** Whether an outline bounds a slab at all. */
public final class Soundness {
  /** Less than this is no slab, square inches. */
  private static final double LEAST_AREA = 36;

  private Soundness() {}

  /** Whether it runs counter-clockwise round some area and never crosses itself. */
  public static boolean isSound(Outline outline) {
    List<Edge> edges = outline.ring().edges();
    return outline.ring().signedArea() > LEAST_AREA && !crosses(edges);
  }

  private static boolean crosses(List<Edge> edges) {
    int n = edges.size();
    for (int i = 0; i < n; i++) {
      if (edges.get(i).length() < 0.5) {
        return true;
      }
      for (int j = i + 2; j < n; j++) {
        boolean areNeighbours = i == 0 && j == n - 1;
        if (!areNeighbours && !Crossing.of(edges.get(i), edges.get(j)).isEmpty()) {
          return true;
        }
      }
    }
    return false;
  }
}
