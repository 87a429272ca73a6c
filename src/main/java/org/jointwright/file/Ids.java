package org.jointwright.file;

import java.util.HashSet;
import java.util.Set;
import org.jointwright.file.json.Json;

/** Names of slabs, joints and fixed objects. */
final class Ids {
  private static final int LONGEST = 60;

  private Ids() {}

  /** The id of an object, empty where it has none. */
  static String read(Reading reading, Fields fields) {
    Json value = fields.take("id");
    switch (value) {
      case null -> {
        return "";
      }
      case Json.Text t when !t.value().isBlank() && t.value().length() <= LONGEST -> {
        return t.value();
      }
      default -> reading.problem(fields.place().key("id"), value, "file.notAnId", LONGEST);
    }
    return "";
  }

  /** The names in use among things of one kind. */
  static final class Names {
    private final Set<String> used = new HashSet<>();

    /** Whether the name is new; an empty one is not counted. */
    boolean add(String id) {
      return id.isEmpty() || used.add(id);
    }

    /** The first name of its sort that is not in use: {@code J1}, {@code J2} and so on. */
    String next(String start) {
      int n = 1;
      while (!used.add(start + n)) {
        n++;
      }
      return start + n;
    }
  }
}
