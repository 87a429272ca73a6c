package org.jointwright.file;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jointwright.file.json.Decimals;
import org.jointwright.file.json.Json;
import org.jointwright.file.json.JsonPrinter;
import org.jointwright.measure.Length;
import org.jointwright.plan.Kept;
import org.jspecify.annotations.Nullable;

/**
 * One object of the file while it is read: each member is taken once, and what nobody took is kept.
 */
final class Fields {
  private static final int LONGEST_TEXT = 10_000;

  private final Reading reading;
  private final Json.Members json;
  private final Place place;
  private final Map<String, Json> rest;
  private final Map<String, Kept.Typed> typed = new LinkedHashMap<>();

  Fields(Reading reading, Json.Members json, Place place) {
    this.reading = reading;
    this.json = json;
    this.place = place;
    this.rest = new LinkedHashMap<>(json.members());
  }

  /** The object at a place; says so when there is something else. */
  static Optional<Fields> of(Reading reading, Json json, Place place) {
    if (json instanceof Json.Members m) {
      return Optional.of(new Fields(reading, m, place));
    }
    reading.problem(place, json, "file.notAnObject");
    return Optional.empty();
  }

  Place place() {
    return place;
  }

  int line() {
    return json.line();
  }

  /** Every member, for an object whose keys are not known beforehand. */
  Map<String, Json> members() {
    return json.members();
  }

  /** The member of that name; {@code null} in the file counts as absent. */
  @Nullable Json take(String name) {
    Json value = rest.remove(name);
    return value instanceof Json.Nothing ? null : value;
  }

  /** A member that must be there. */
  @Nullable Json need(String name, String whatToWrite) {
    Json value = take(name);
    if (value == null) {
      reading.problem(place, json, "file.missing", name, whatToWrite);
    }
    return value;
  }

  Optional<Fields> object(String name) {
    Json value = take(name);
    return value == null ? Optional.empty() : of(reading, value, place.key(name));
  }

  List<Json> list(String name) {
    Json value = take(name);
    if (value == null) {
      return List.of();
    }
    if (value instanceof Json.Items i) {
      return i.items();
    }
    reading.problem(place.key(name), value, "file.notAList");
    return List.of();
  }

  /** Says so when a member that must be there is not. */
  void require(String name, String whatToWrite) {
    if (!json.members().containsKey(name)) {
      reading.problem(place, json, "file.missing", name, whatToWrite);
    }
  }

  /** A text, empty when absent. */
  String text(String name) {
    Json value = take(name);
    if (value == null) {
      return "";
    }
    if (value instanceof Json.Text t && t.value().length() <= LONGEST_TEXT) {
      return t.value();
    }
    reading.problem(place.key(name), value, "file.notAText");
    return "";
  }

  boolean flag(String name) {
    Json value = take(name);
    if (value == null) {
      return false;
    }
    if (value instanceof Json.Flag f) {
      return f.value();
    }
    reading.problem(place.key(name), value, "file.notAFlag");
    return false;
  }

  /** One of several words. */
  <E extends Enum<E>> Optional<E> choice(String name, E[] all, Function<E, String> word) {
    Json value = take(name);
    return value == null ? Optional.empty() : choice(reading, place.key(name), value, all, word);
  }

  /** One of several words, in a value that belongs to no object. */
  static <E extends Enum<E>> Optional<E> choice(
      Reading reading, Place at, Json value, E[] all, Function<E, String> word) {
    if (value instanceof Json.Text t) {
      for (E e : all) {
        if (word.apply(e).equals(t.value())) {
          return Optional.of(e);
        }
      }
    }
    String said = Arrays.stream(all).map(word).collect(Collectors.joining(", "));
    reading.problem(at, value, "file.unknownWord", shown(value), said);
    return Optional.empty();
  }

  OptionalDouble number(String name, double least, double most) {
    Json value = take(name);
    if (value == null) {
      return OptionalDouble.empty();
    }
    if (value instanceof Json.Figure n) {
      double d = Double.parseDouble(n.text());
      if (d >= least && d <= most) {
        // A zero has no sign worth keeping, and what is as good as none is zero.
        return OptionalDouble.of(Math.abs(d) < 1e-9 ? 0 : d);
      }
    }
    reading.problem(
        place.key(name),
        value,
        "file.notANumberBetween",
        shown(value),
        Decimals.rounded(least, 2),
        Decimals.rounded(most, 2));
    return OptionalDouble.empty();
  }

  /** A length within bounds; how it was written is kept. */
  Optional<Length> length(String name, Bounds bounds) {
    Json value = take(name);
    if (value == null) {
      return Optional.empty();
    }
    Place at = place.key(name);
    Optional<Double> inches = Lengths.read(reading, value, at);
    inches.ifPresent(i -> keepTyped(name, value, i));
    return inches.filter(i -> bounds.admit(reading, at, value, i)).map(Length::inches);
  }

  void keepTyped(String field, Json value, double inches) {
    typed.put(field, new Kept.Typed(Lengths.textOf(value), inches));
  }

  void keepTyped(Map<String, Kept.Typed> more) {
    typed.putAll(more);
  }

  /** An unknown member of something that has no place of its own to keep it in. */
  void keepUnknown(String key, Json value) {
    rest.put(key, value);
  }

  /** What was not taken, and lengths as they were typed. */
  Kept kept() {
    if (rest.isEmpty() && typed.isEmpty()) {
      return Kept.NOTHING;
    }
    Map<String, String> unknown = new LinkedHashMap<>();
    rest.forEach((k, v) -> unknown.put(k, JsonPrinter.flat(v)));
    return new Kept(unknown, typed);
  }

  /** A value as a message shows it. */
  static String shown(Json value) {
    String flat = value instanceof Json.Text t ? t.value() : JsonPrinter.flat(value);
    return flat.length() <= 40 ? flat : flat.substring(0, 40) + "…";
  }
}
