package org.jointwright.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.file.json.Json;
import org.jointwright.measure.Length;
import org.jointwright.plan.How;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Purpose;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** Reads one joint. */
final class JointReader {
  private final Reading reading;
  private final Fields fields;

  private JointReader(Reading reading, Fields fields) {
    this.reading = reading;
    this.fields = fields;
  }

  /** The joint; its id is empty where the file gives none. */
  static Optional<Joint> read(Reading reading, Json json, Place place) {
    return Fields.of(reading, json, place).flatMap(f -> new JointReader(reading, f).read());
  }

  private Optional<Joint> read() {
    int before = reading.problemCount();
    String id = Ids.read(reading, fields);
    Optional<JointKind> kind = fields.choice("kind", JointKind.values(), FileWords.JOINT_KIND);
    Json pathJson = fields.need("path", "[[x, y], [x, y]]");
    Optional<Path> path = pathJson == null ? Optional.empty() : path(pathJson);
    boolean locked = fields.flag("locked");
    Optional<Purpose> purpose = fields.choice("purpose", Purpose.values(), FileWords.PURPOSE);
    Optional<How> how = fields.choice("how", How.values(), How::word);
    Optional<Length> depth = fields.length("depth", Bounds.DEPTH);
    Optional<Length> width = fields.length("width", Bounds.WIDTH);
    if (path.isEmpty() || reading.problemCount() > before) {
      return Optional.empty();
    }
    JointKind sure = kind.orElse(JointKind.CONTRACTION);
    return Optional.of(
        new Joint(
            id,
            sure,
            path.get(),
            locked,
            purpose.orElse(FileWords.usualPurpose(sure)),
            how,
            depth,
            width,
            fields.kept()));
  }

  private Optional<Path> path(Json json) {
    VertexList list = new VertexList(reading, fields.place().key("path"));
    Optional<List<ReadVertex>> read =
        list.read(json).map(this::withStraightEnd).flatMap(v -> list.withoutDoubles(v, false));
    if (read.isEmpty()) {
      return Optional.empty();
    }
    List<ReadVertex> vertices = read.get();
    if (vertices.size() < 2) {
      reading.problem(fields.place().key("path"), json, "file.jointIsAPoint");
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
    Place place = fields.place().key("path").item(last.index());
    reading.repair(place, last.line(), "file.bowAfterTheEnd");
    List<ReadVertex> mended = new ArrayList<>(vertices);
    mended.set(mended.size() - 1, last.straight());
    return mended;
  }

  /** A path has no room for how it was written: the joint keeps it, by the vertex's number. */
  private void keep(ReadVertex v, int index, @org.jspecify.annotations.Nullable Edge edge) {
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
