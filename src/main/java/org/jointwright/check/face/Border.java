package org.jointwright.check.face;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.joint.Source;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * A piece of joint with a panel on either side.
 *
 * @param joint the joint's id
 * @param one the panel on one side
 * @param other the panel on the other; the same one where a joint stops inside a panel
 */
public record Border(String joint, Face one, Face other) {
  /** The middles of two runs of one piece lie no farther apart, inches. */
  private static final double SAME = 0.1;

  private record Run(Face face, Edge edge) {}

  /** The borders between panels, panel by panel, each once. */
  public static List<Border> of(List<Face> faces) {
    Map<List<Point>, List<Run>> open = new HashMap<>();
    List<Border> borders = new ArrayList<>();
    for (Face face : faces) {
      for (Step s : face.steps().toList()) {
        if (s.source() instanceof Source.OnJoint j) {
          Edge e = s.edge();
          List<Run> waiting = open.getOrDefault(List.of(e.end(), e.start()), List.of());
          waiting.stream()
              .filter(r -> r.edge().at(0.5).distance(e.at(0.5)) <= SAME)
              .findFirst()
              .ifPresent(r -> borders.add(new Border(j.joint(), r.face(), face)));
          open.computeIfAbsent(List.of(e.start(), e.end()), k -> new ArrayList<>())
              .add(new Run(face, e));
        }
      }
    }
    return borders;
  }
}
