package org.jointwright.file.json;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A JSON value; {@code line} is where it starts in the file, from 1, or 0 when made here. */
public sealed interface Json {
  /** The line it starts on. */
  int line();

  /** An object, its members in the order of the file. */
  record Members(Map<String, Json> members, int line) implements Json {
    /** Copies the map, order kept. */
    public Members {
      members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
    }
  }

  /** An array. */
  record Items(List<Json> items, int line) implements Json {
    /** Copies the list. */
    public Items {
      items = List.copyOf(items);
    }
  }

  /** A string. */
  record Text(String value, int line) implements Json {}

  /** A number, by its text. */
  record Figure(String text, int line) implements Json {}

  /** {@code true} or {@code false}. */
  record Flag(boolean value, int line) implements Json {}

  /** {@code null}. */
  record Nothing(int line) implements Json {}

  /** JSON text kept from a file, printed as it is. */
  record Raw(String text) implements Json {
    @Override
    public int line() {
      return 0;
    }
  }

  /** An object made here. */
  static Json of(Map<String, Json> members) {
    return new Members(members, 0);
  }

  /** An array made here. */
  static Json of(List<Json> items) {
    return new Items(items, 0);
  }

  /** A string made here. */
  static Json of(String text) {
    return new Text(text, 0);
  }

  /** A flag made here. */
  static Json of(boolean value) {
    return new Flag(value, 0);
  }
}
