package org.jointwright.file;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jointwright.file.json.Json;
import org.jointwright.plan.Kept;

/**
 * A round object is two objects in the file, {@code shape} and the {@code circle} in it, but one in
 * the plan: the plan's one keeps what both said besides.
 */
final class RoundKept {
  private static final String SHAPE = "shape\u0000";

  private RoundKept() {}

  static Kept joined(Kept shape, Kept circle) {
    Map<String, String> unknown = new LinkedHashMap<>(circle.unknown());
    shape.unknown().forEach((key, text) -> unknown.put(SHAPE + key, text));
    return new Kept(unknown, circle.typed());
  }

  /** Adds what {@code shape} said besides. */
  static void addToShape(Kept kept, Map<String, Json> members) {
    kept.unknown()
        .forEach(
            (key, text) -> {
              if (key.startsWith(SHAPE)) {
                members.put(key.substring(SHAPE.length()), new Json.Raw(text));
              }
            });
  }

  /** Adds what {@code circle} said besides. */
  static void addToCircle(Kept kept, Map<String, Json> members) {
    kept.unknown()
        .forEach(
            (key, text) -> {
              if (!key.startsWith(SHAPE)) {
                members.put(key, new Json.Raw(text));
              }
            });
  }
}
