package org.jointwright.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.file.json.Decimals;
import org.jointwright.file.json.Json;
import org.jointwright.plan.Kept;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jspecify.annotations.Nullable;

/** Reads the {@code path} of a joint, be it the slab's own or one that is there already. */
final class PathReader {
  private final Reading reading;
  private final Fields fields;
  private final Place place;

  private PathReader(Reading reading, Fields fields) {
    this.reading = reading;
    this.fields = fields;
    this.place = fields.place().key("path");
  }

  /** The path; empty where there is none, which is reported. */
  static Optional<Path> read(Reading reading, Fields fields) {
    Json json = fields.need("path", "[[x, y], [x, y]]");
    return json == null ? Optional.empty() : new PathReader(reading, fields).path(json);
  }

  private Optional<Path> path(Json json) {
    VertexList list = new VertexList(reading, place);
    Optional<List<ReadVertex>> read =
        list.read(json).map(this::withStraightEnd).flatMap(v -> list.withoutDoubles(v, false));
    if (read.isEmpty()) {
      return Optional.empty();
    }
    List<ReadVertex> vertices = read.get();
    if (vertices.size() < 2) {
      reading.problem(place, json, "file.jointIsAPoint");
      return Optional.empty();
    }
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i + 1 < vertices.size(); i++) {
      Point to = vertices.get(i + 1).at();
      if (!list.arcFits(vertices.get(i), to)) {
        return Optional.empty();
      }
      edges.add(vertices.get(i).vertex().edgeTo(to));
    }
    for (int i = 0; i < vertices.size(); i++) {
      keep(vertices.get(i), i, i < edges.size() ? edges.get(i) : null);
    }
    return Optional.of(new Path(edges));
  }

  private List<ReadVertex> withStraightEnd(List<ReadVertex> vertices) {
    if (vertices.isEmpty() || vertices.getLast().via().isEmpty()) {
      return vertices;
    }
    ReadVertex last = vertices.getLast();
    reading.repair(place.item(last.index()), last.line(), "file.bowAfterTheEnd");
    List<ReadVertex> mended = new ArrayList<>(vertices);
    mended.set(mended.size() - 1, last.straight());
    return mended;
  }

  /** A path has no room for how it was written: the joint keeps it, by the vertex's number. */
  private void keep(ReadVertex v, int index, @Nullable Edge edge) {
    Map<String, Kept.Typed> typed = new LinkedHashMap<>();
    v.typed().forEach((field, t) -> typed.put(JointPath.field(index, field), t));
    if (edge instanceof Arc arc && v.via().isPresent()) {
      // The plan's arc has a middle of its own; as long as that stays, so does the text of the via.
      Point middle = arc.middle();
      keepVia(typed, JointPath.field(index, "via.x"), middle.x(), v.via().get().x());
      keepVia(typed, JointPath.field(index, "via.y"), middle.y(), v.via().get().y());
    }
    fields.keepTyped(typed);
    v.unknown()
        .forEach((k, text) -> fields.keepUnknown(JointPath.unknown(index, k), new Json.Raw(text)));
  }

  private void keepVia(Map<String, Kept.Typed> typed, String field, double now, double given) {
    Kept.Typed written = typed.get(field);
    String text = written == null ? Decimals.shortest(given, reading.unit()) : written.text();
    typed.put(field, new Kept.Typed(text, now));
  }
}
