package org.jointwright.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.file.json.Json;
import org.jointwright.measure.LengthUnit;
import org.jointwright.plan.Kept;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Writes the path of a joint as vertices, and names where a joint keeps what they were besides. */
final class JointPath {
  private static final String UNKNOWN = "path\u0000";

  private JointPath() {}

  /** The name that a vertex's field has among the joint's typed lengths. */
  static String field(int index, String field) {
    return "path." + index + "." + field;
  }

  /** The name that a vertex's unknown member has among the joint's: no file has such a key. */
  static String unknown(int index, String key) {
    return UNKNOWN + index + '\u0000' + key;
  }

  /** Whether a key among the joint's unknown ones belongs to a vertex of its path. */
  static boolean isOfVertex(String key) {
    return key.startsWith(UNKNOWN);
  }

  static Json json(Path path, Kept kept, LengthUnit unit) {
    List<Json> vertices = new ArrayList<>();
    for (Edge e : path.edges()) {
      vertices.add(vertex(e.start(), e, vertices.size(), kept, unit));
    }
    Point end = path.end();
    vertices.add(vertex(end, new Segment(end, end), vertices.size(), kept, unit));
    return Json.of(vertices);
  }

  private static Json vertex(Point at, Edge leaving, int index, Kept kept, LengthUnit unit) {
    Json point = point(kept, field(index, "at"), at, unit);
    Map<String, Json> more = new LinkedHashMap<>();
    kept.unknown()
        .forEach(
            (key, text) -> {
              String own = unknown(index, "");
              if (key.startsWith(own)) {
                more.put(key.substring(own.length()), new Json.Raw(text));
              }
            });
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("at", point);
    if (leaving instanceof Arc arc) {
      members.put("via", point(kept, field(index, "via"), arc.middle(), unit));
    }
    members.putAll(more);
    return members.size() == 1 ? point : Json.of(members);
  }

  /** {@code [x, y]}. */
  static Json point(Kept kept, String field, Point p, LengthUnit unit) {
    return Json.of(
        List.of(
            Lengths.coordinate(kept, field + ".x", p.x(), unit),
            Lengths.coordinate(kept, field + ".y", p.y(), unit)));
  }
}
