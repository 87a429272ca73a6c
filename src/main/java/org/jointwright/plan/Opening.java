package org.jointwright.plan;

import java.util.Map;

/**
 * An opening in a slab.
 *
 * @param outline its edge
 * @param edges what its edges are against, by edge number; open ground where absent
 * @param kept what the file said besides
 */
public record Opening(Outline outline, Map<Integer, EdgeSetting> edges, Kept kept) {
  /** Copies the map. */
  public Opening {
    edges = java.util.Collections.unmodifiableMap(new java.util.TreeMap<>(edges));
  }

  /** What edge {@code i} is against. */
  public EdgeSetting edge(int i) {
    return edges.getOrDefault(i, EdgeSetting.OPEN);
  }
}
