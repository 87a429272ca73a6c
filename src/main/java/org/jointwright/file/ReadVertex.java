package org.jointwright.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.file.json.Decimals;
import org.jointwright.file.json.Json;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;

/**
 * A vertex as the file has it.
 *
 * @param at where it stands
 * @param via a point on the arc that leaves it
 * @param unknown members nobody knows
 * @param typed how its coordinates were typed, {@code at.x} and so on
 * @param index its number in the file's list
 * @param line its line in the file
 */
record ReadVertex(
    Point at,
    Optional<Point> via,
    Map<String, String> unknown,
    Map<String, Kept.Typed> typed,
    int index,
    int line) {

  /** The vertex at a place, either {@code [x, y]} or an object; empty when it is neither. */
  static Optional<ReadVertex> of(Reading reading, Json json, Place place, int index) {
    Map<String, Kept.Typed> typed = new LinkedHashMap<>();
    if (json instanceof Json.Items pair) {
      return point(reading, pair, place, "at", typed)
          .map(at -> new ReadVertex(at, Optional.empty(), Map.of(), typed, index, json.line()));
    }
    if (!(json instanceof Json.Members members)) {
      String arc = "{\"at\": [x, y], \"via\": [x, y]}";
      reading.problem(place, json, "file.notAVertex", Fields.shown(json), arc);
      return Optional.empty();
    }
    Fields fields = new Fields(reading, members, place);
    Json at = fields.need("at", "[x, y]");
    Json via = fields.take("via");
    if (at == null) {
      return Optional.empty();
    }
    Optional<Point> start = point(reading, at, place.key("at"), "at", typed);
    Optional<Point> through = Optional.empty();
    if (via != null) {
      through = point(reading, via, place.key("via"), "via", typed);
      if (through.isEmpty()) {
        return Optional.empty();
      }
    }
    Optional<Point> bow = through;
    return start.map(
        p -> new ReadVertex(p, bow, fields.kept().unknown(), typed, index, json.line()));
  }

  /** A point {@code [x, y]}; how it was typed is put under {@code field.x} and {@code field.y}. */
  static Optional<Point> point(
      Reading reading, Json json, Place place, String field, Map<String, Kept.Typed> typed) {
    if (!(json instanceof Json.Items pair) || pair.items().size() != 2) {
      reading.problem(place, json, "file.notAPoint", Fields.shown(json));
      return Optional.empty();
    }
    List<Json> xy = pair.items();
    Optional<Double> x = Lengths.read(reading, xy.get(0), place.item(0));
    Optional<Double> y = Lengths.read(reading, xy.get(1), place.item(1));
    if (x.isEmpty() || y.isEmpty()) {
      return Optional.empty();
    }
    note(reading, typed, field + ".x", xy.get(0), x.get());
    note(reading, typed, field + ".y", xy.get(1), y.get());
    return Optional.of(new Point(x.get(), y.get()));
  }

  /** Keeps how a coordinate was typed where the writer would put it otherwise. */
  private static void note(
      Reading reading, Map<String, Kept.Typed> typed, String field, Json value, double inches) {
    if (!(value instanceof Json.Figure n)
        || !n.text().equals(Decimals.shortest(inches, reading.unit()))) {
      typed.put(field, new Kept.Typed(Lengths.textOf(value), inches));
    }
  }

  /** This vertex with the arc of another leaving it: how the bow was typed goes with the bow. */
  ReadVertex withBowOf(ReadVertex other) {
    Map<String, Kept.Typed> mixed = new LinkedHashMap<>();
    typed.forEach((field, t) -> putIf(mixed, field, t, !isBow(field)));
    other.typed.forEach((field, t) -> putIf(mixed, field, t, isBow(field)));
    return new ReadVertex(at, other.via, unknown, mixed, index, line);
  }

  private static void putIf(
      Map<String, Kept.Typed> map, String field, Kept.Typed typed, boolean wanted) {
    if (wanted) {
      map.put(field, typed);
    }
  }

  private static boolean isBow(String field) {
    return field.startsWith("via.");
  }

  /** This vertex without an arc. */
  ReadVertex straight() {
    return withBowOf(new ReadVertex(at, Optional.empty(), Map.of(), Map.of(), index, line));
  }

  /** As the plan has it. */
  Vertex vertex() {
    Kept kept = unknown.isEmpty() && typed.isEmpty() ? Kept.NOTHING : new Kept(unknown, typed);
    return new Vertex(at, via, kept);
  }
}
