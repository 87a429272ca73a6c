package org.jointwright.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.file.json.Json;
import org.jointwright.plan.Sizes;
import org.jointwright.shape.Point;

/** Reads a list of vertices and mends doubled ones: what rings and joints have in common. */
final class VertexList {
  /** Points nearer than this are one, inches. */
  static final double SAME = Sizes.SAME;

  private final Reading reading;
  private final Place place;

  VertexList(Reading reading, Place place) {
    this.reading = reading;
    this.place = place;
  }

  /** The vertices of a list; empty when one of them could not be read. */
  Optional<List<ReadVertex>> read(Json json) {
    if (!(json instanceof Json.Items list)) {
      reading.problem(place, json, "file.notVertices", Fields.shown(json));
      return Optional.empty();
    }
    if (!reading.admits(place, json, list.items().size())) {
      return Optional.empty();
    }
    List<ReadVertex> vertices = new ArrayList<>();
    for (int i = 0; i < list.items().size(); i++) {
      ReadVertex.of(reading, list.items().get(i), place.item(i), i).ifPresent(vertices::add);
    }
    return vertices.size() == list.items().size() ? Optional.of(vertices) : Optional.empty();
  }

  /**
   * The vertices without those that stand on the next one; where {@code closed}, the first counts
   * as next to the last. Empty when an arc would have to leave such a vertex.
   */
  Optional<List<ReadVertex>> withoutDoubles(List<ReadVertex> vertices, boolean closed) {
    List<ReadVertex> single = new ArrayList<>();
    boolean fits = true;
    for (int i = 0; i < vertices.size(); i++) {
      ReadVertex v = vertices.get(i);
      boolean isLast = i == vertices.size() - 1;
      if (isLast && !closed) {
        single.add(v);
        continue;
      }
      ReadVertex next = vertices.get((i + 1) % vertices.size());
      if (vertices.size() == 1 || v.at().distance(next.at()) > SAME) {
        single.add(v);
      } else if (v.via().isPresent()) {
        reading.problem(place.item(i), v.line(), "file.arcToItself");
        fits = false;
      } else if (isLast) {
        reading.repair(place.item(i), v.line(), "file.firstRepeated");
      } else {
        reading.repair(place.item(i), v.line(), "file.doubled", i + 1);
      }
    }
    return fits ? Optional.of(single) : Optional.empty();
  }

  /** Whether an arc can leave {@code from} through its via point to {@code to}. */
  boolean arcFits(ReadVertex from, Point to) {
    if (from.via().isEmpty()) {
      return true;
    }
    Point bow = from.via().get().minus(from.at());
    Point chord = to.minus(from.at());
    double along = bow.dot(chord) / chord.dot(chord);
    boolean isFlat = Math.abs(bow.cross(chord)) <= 1e-6 * chord.dot(chord);
    if (isFlat && !(along > 0 && along < 1)) {
      reading.problem(place.item(from.index()).key("via"), from.line(), "file.viaBesideTheArc");
      return false;
    }
    return true;
  }
}
