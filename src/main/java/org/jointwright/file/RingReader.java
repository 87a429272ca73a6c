package org.jointwright.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jointwright.file.json.Decimals;
import org.jointwright.file.json.Json;
import org.jointwright.plan.Outline;
import org.jointwright.shape.Ring;
import org.jointwright.shape.SelfCrossing;

/** Reads a ring: checks that it closes an area without crossing itself, mends what it can. */
final class RingReader {
  /** One ring of more vertices than this is no outline that anybody forms up. */
  private static final int MOST_VERTICES = 5_000;

  /** A ring round less than this is none, square inches. */
  private static final double LEAST_AREA = 1;

  private final Reading reading;
  private final Place place;
  private final Json json;

  private RingReader(Reading reading, Place place, Json json) {
    this.reading = reading;
    this.place = place;
    this.json = json;
  }

  /**
   * A ring as read.
   *
   * @param outline counter-clockwise
   * @param edges for each edge of the file's list its number in the outline; edges that fell away
   *     are not in it
   * @param given how many vertices the file's list has
   * @param turned whether the file's list ran clockwise
   */
  record ReadRing(Outline outline, Map<Integer, Integer> edges, int given, boolean turned) {}

  static Optional<ReadRing> read(Reading reading, Json json, Place place) {
    return new RingReader(reading, place, json).read();
  }

  private Optional<ReadRing> read() {
    VertexList list = new VertexList(reading, place);
    Optional<List<ReadVertex>> given = list.read(json).filter(this::isBounded);
    Optional<List<ReadVertex>> vertices =
        given
            .flatMap(v -> list.withoutDoubles(v, true))
            .filter(this::hasCorners)
            .filter(v -> arcsFit(list, v));
    if (given.isEmpty() || vertices.isEmpty()) {
      return Optional.empty();
    }
    int count = given.get().size();
    List<ReadVertex> read = vertices.get();
    Ring ring = outline(read).ring();
    if (crossesItself(ring, read) || hasNoArea(ring)) {
      return Optional.empty();
    }
    if (ring.signedArea() < 0) {
      reading.repair(place, json.line(), "file.turned");
      read = turned(read);
      return Optional.of(new ReadRing(outline(read), keysTurned(read), count, /* turned= */ true));
    }
    return Optional.of(new ReadRing(outline(read), keys(read), count, /* turned= */ false));
  }

  private boolean isBounded(List<ReadVertex> vertices) {
    if (vertices.size() > MOST_VERTICES) {
      reading.problem(place, json, "file.ringTooLong", vertices.size(), MOST_VERTICES);
      return false;
    }
    return true;
  }

  private boolean hasCorners(List<ReadVertex> vertices) {
    long arcs = vertices.stream().filter(v -> v.via().isPresent()).count();
    if (vertices.size() >= 3 || (vertices.size() == 2 && arcs > 0)) {
      return true;
    }
    reading.problem(place, json, "file.tooFewVertices", differing(vertices));
    return false;
  }

  /** At least one where the list gives any: the doubles that fell away stood somewhere too. */
  private int differing(List<ReadVertex> left) {
    boolean isEmpty = json instanceof Json.Items list && list.items().isEmpty();
    return isEmpty ? 0 : Math.max(1, left.size());
  }

  private static boolean arcsFit(VertexList list, List<ReadVertex> vertices) {
    boolean fit = true;
    for (int i = 0; i < vertices.size(); i++) {
      fit &= list.arcFits(vertices.get(i), vertices.get((i + 1) % vertices.size()).at());
    }
    return fit;
  }

  private boolean crossesItself(Ring ring, List<ReadVertex> vertices) {
    Optional<SelfCrossing> crossing = SelfCrossing.of(ring, VertexList.SAME);
    crossing.ifPresent(
        c ->
            reading.problem(
                place,
                vertices.get(c.second()).line(),
                "file.crossesItself",
                Integer.toString(vertices.get(c.first()).index()),
                Integer.toString(vertices.get(c.second()).index()),
                Decimals.rounded(c.at().x() / reading.unit().inches(), 3),
                Decimals.rounded(c.at().y() / reading.unit().inches(), 3)));
    return crossing.isPresent();
  }

  private boolean hasNoArea(Ring ring) {
    if (ring.area() >= LEAST_AREA) {
      return false;
    }
    reading.problem(place, json, "file.noArea");
    return true;
  }

  private static Outline outline(List<ReadVertex> vertices) {
    return new Outline(vertices.stream().map(ReadVertex::vertex).toList());
  }

  /**
   * The ring run the other way from the same first vertex; each bow goes to its edge's new start.
   */
  private static List<ReadVertex> turned(List<ReadVertex> vertices) {
    int n = vertices.size();
    List<ReadVertex> turned = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      turned.add(vertices.get((n - i) % n).withBowOf(vertices.get(n - 1 - i)));
    }
    return turned;
  }

  private static Map<Integer, Integer> keys(List<ReadVertex> vertices) {
    Map<Integer, Integer> keys = new TreeMap<>();
    for (int i = 0; i < vertices.size(); i++) {
      keys.put(vertices.get(i).index(), i);
    }
    return keys;
  }

  private static Map<Integer, Integer> keysTurned(List<ReadVertex> turned) {
    int n = turned.size();
    Map<Integer, Integer> keys = new TreeMap<>();
    for (int i = 0; i < n; i++) {
      // Edge i of the turned ring is the edge that left the vertex it now runs to.
      keys.put(turned.get((i + 1) % n).index(), i);
    }
    return keys;
  }
}
