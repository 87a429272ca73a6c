package org.jointwright.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Mirror;
import org.jointwright.shape.Point;

/** Invented slabs that mirror at an upright line, and layouts that do. */
final class Symmetric {
  private Symmetric() {}

  /** The outlines, by what they are, each with an upright axis at x = 0. */
  static Map<String, Outline> all() {
    Map<String, Outline> m = new LinkedHashMap<>();
    m.put("T", outline(-5, 0, 5, 0, 5, 16, 17, 16, 17, 26, -17, 26, -17, 16, -5, 16));
    m.put("U", outline(-17, 0, 17, 0, 17, 26, 7, 26, 7, 10, -7, 10, -7, 26, -17, 26));
    m.put("trapezoid", outline(-12, 0, 12, 0, 6, 12, -6, 12));
    m.put("gable", outline(-11, 0, 11, 0, 11, 14, 0, 22, -11, 14));
    m.put("hammerhead", outline(-6, 0, 6, 0, 6, 24, 25, 24, 25, 36, -25, 36, -25, 24, -6, 24));
    m.put("half round", new Outline(List.of(bow(8), at(-8, 0))));
    m.put("D", new Outline(List.of(at(-7, -10), at(7, -10), bow(7), at(-7, 0))));
    return m;
  }

  private static Vertex at(double x, double y) {
    return Vertex.at(new Point(12 * x, 12 * y));
  }

  private static Vertex bow(double r) {
    return Vertex.arc(new Point(12 * r, 0), new Point(0, 12 * r));
  }

  /** An outline whose corners are given in feet. */
  static Outline outline(double... feet) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < feet.length; i += 2) {
      corners.add(new Point(12 * feet[i], 12 * feet[i + 1]));
    }
    return Outline.of(corners);
  }

  /**
   * Whether the contraction joints of the only slab have joints at their mirror images, to an inch.
   */
  static boolean isEven(Layout layout, Mirror mirror) {
    List<Edge> joints =
        layout.slabs().getFirst().joints().stream()
            .filter(j -> j.kind() == JointKind.CONTRACTION)
            .map(Joint::path)
            .flatMap(p -> p.edges().stream())
            .toList();
    return joints.stream().map(mirror::of).allMatch(e -> isCovered(e, joints));
  }

  private static boolean isCovered(Edge image, List<Edge> joints) {
    for (double share = 0; share <= 1; share += 0.125) {
      Point p = image.at(share);
      if (joints.stream().noneMatch(j -> j.distance(p) <= 1)) {
        return false;
      }
    }
    return true;
  }
}
