package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.Outline;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * What is known of a ring's edges after its corners changed. Features keep their distances from
 * their edge's first corner; what no longer fits on the edge is cut off.
 */
final class EdgesAfter {
  private EdgesAfter() {}

  /** The same settings on edges that may have become shorter. */
  static Map<Integer, EdgeSetting> fitted(Outline now, Map<Integer, EdgeSetting> settings) {
    List<Edge> edges = now.ring().edges();
    Map<Integer, EdgeSetting> fitted = new TreeMap<>();
    settings.forEach(
        (i, s) -> fitted.put(i, s.withFeatures(cut(s.features(), 0, edges.get(i).length()))));
    return fitted;
  }

  /**
   * The settings after a corner was put on edge {@code i}: both parts are against what the whole
   * was, and each feature goes to the part that holds more of it. No door runs round a corner.
   */
  static Map<Integer, EdgeSetting> split(
      Outline before, Map<Integer, EdgeSetting> settings, int i, Point corner) {
    Map<Integer, EdgeSetting> split = new TreeMap<>();
    settings.forEach((k, s) -> split.put(k <= i ? k : k + 1, s));
    EdgeSetting whole = settings.get(i);
    if (whole == null) {
      return split;
    }
    Edge edge = before.ring().edges().get(i);
    double at = edge.nearest(corner) * edge.length();
    List<Feature> first = new ArrayList<>();
    List<Feature> second = new ArrayList<>();
    for (Feature f : whole.features()) {
      if (at - f.from() >= f.to() - at) {
        f.cut(0, at).ifPresent(first::add);
      } else {
        f.cut(at, edge.length()).ifPresent(cut -> second.add(cut.shifted(-at)));
      }
    }
    split.put(i, whole.withFeatures(first));
    split.put(i + 1, whole.withFeatures(second));
    return split;
  }

  /**
   * The settings after corner {@code i} was taken out of a ring of {@code n}: the edge before it
   * stays against what it was, and takes over the features of the edge that left the corner, each
   * on the spot nearest to where it stood.
   */
  static Map<Integer, EdgeSetting> joined(
      Outline before, Map<Integer, EdgeSetting> settings, int i, Edge joined) {
    int n = before.vertices().size();
    int previous = (i + n - 1) % n;
    Map<Integer, EdgeSetting> left = new TreeMap<>();
    settings.forEach(
        (k, s) -> {
          if (k != i) {
            left.put(k < i ? k : k - 1, s);
          }
        });
    EdgeSetting gone = settings.getOrDefault(i, EdgeSetting.OPEN);
    if (gone.features().isEmpty()) {
      return left;
    }
    Edge edge = before.ring().edges().get(i);
    int key = previous < i ? previous : previous - 1;
    EdgeSetting own = left.getOrDefault(key, EdgeSetting.OPEN);
    List<Feature> features = new ArrayList<>(own.features());
    for (Feature f : gone.features()) {
      double from = along(joined, edge, f.from());
      double to = along(joined, edge, f.to());
      if (to - from >= Feature.SHORTEST) {
        features.add(new Feature(f.kind(), from, to, f.kept()));
      }
    }
    left.put(key, own.withFeatures(features));
    return left;
  }

  private static double along(Edge joined, Edge edge, double distance) {
    Point p = edge.at(Math.clamp(distance / edge.length(), 0, 1));
    return joined.nearest(p) * joined.length();
  }

  private static List<Feature> cut(List<Feature> features, double least, double most) {
    return features.stream().flatMap(f -> f.cut(least, most).stream()).toList();
  }
}
