package org.jointwright.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.file.json.Json;
import org.jointwright.measure.Length;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Slab;
import org.jointwright.practice.BoxOuts;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** Reads the fixed objects. */
final class FixedReader {
  /** An object farther from its slab was put in the wrong place: no box-out reaches it. */
  private static final Length REACH = BoxOuts.REACH.value();

  private static final String ROUND = "{\"circle\": {\"at\": [x, y], \"diameter\": \"8 in\"}}";
  private static final String OUTLINED = "{\"ring\": [[x, y], [x, y], [x, y]]}";

  private final Reading reading;
  private final List<Slab> slabs;
  private final boolean slabsAreWhole;

  /**
   * @param slabsAreWhole whether every slab of the file could be read, so that a name that is not
   *     among them is wrong
   */
  FixedReader(Reading reading, List<Slab> slabs, boolean slabsAreWhole) {
    this.reading = reading;
    this.slabs = slabs;
    this.slabsAreWhole = slabsAreWhole;
  }

  List<FixedObject> read(List<Json> items) {
    List<FixedObject> objects = new ArrayList<>();
    Ids.Names names = new Ids.Names();
    for (int i = 0; i < items.size(); i++) {
      Place place = new Place.Top().key("fixed").item(i);
      int line = items.get(i).line();
      Fields.of(reading, items.get(i), place)
          .flatMap(this::object)
          .ifPresent(
              o -> {
                if (!names.add(o.id())) {
                  reading.problem(place.key("id"), line, "file.twoFixed", o.id());
                }
                objects.add(o);
              });
    }
    return objects.stream().map(o -> named(o, names)).toList();
  }

  private static FixedObject named(FixedObject o, Ids.Names names) {
    return o.id().isEmpty()
        ? new FixedObject(names.next("F"), o.slab(), o.kind(), o.shape(), o.kept())
        : o;
  }

  private Optional<FixedObject> object(Fields f) {
    int before = reading.problemCount();
    String id = Ids.read(reading, f);
    FixedKind kind =
        f.choice("kind", FixedKind.values(), FileWords.FIXED_KIND).orElse(FixedKind.OTHER);
    String named = f.text("slab");
    Optional<FixedShape> shape = shape(f);
    if (shape.isEmpty() || reading.problemCount() > before) {
      return Optional.empty();
    }
    return slabOf(f, named, shape.get().ring())
        .map(s -> new FixedObject(id, s, kind, shape.get(), f.kept()));
  }

  private Optional<String> slabOf(Fields f, String named, Ring ring) {
    List<Slab> near = slabs.stream().filter(s -> reaches(s.outline().ring(), ring)).toList();
    if (named.isEmpty()) {
      if (near.size() == 1) {
        reading.repair(f.place(), f.line(), "file.fixedGivenSlab", near.getFirst().id());
        return Optional.of(near.getFirst().id());
      }
      if (slabsAreWhole) {
        reading.problem(f.place(), f.line(), "file.fixedWithoutSlab");
      }
      return Optional.empty();
    }
    if (slabs.stream().noneMatch(s -> s.id().equals(named))) {
      if (slabsAreWhole) {
        reading.problem(f.place().key("slab"), f.line(), "file.fixedInNoSlab", named);
      }
      return Optional.empty();
    }
    if (near.stream().noneMatch(s -> s.id().equals(named))) {
      reading.problem(f.place().key("shape"), f.line(), "file.fixedOutside", named, REACH);
      return Optional.empty();
    }
    return Optional.of(named);
  }

  private static boolean reaches(Ring slab, Ring object) {
    return object.vertices().stream()
        .anyMatch(p -> slab.contains(p) || slab.distance(p) <= REACH.inches());
  }

  private Optional<FixedShape> shape(Fields f) {
    Json json = f.need("shape", ROUND);
    if (json == null) {
      return Optional.empty();
    }
    Place place = f.place().key("shape");
    Optional<Fields> read = Fields.of(reading, json, place);
    if (read.isEmpty()) {
      return Optional.empty();
    }
    Fields shape = read.get();
    Optional<Fields> circle = shape.object("circle");
    Json ring = shape.take("ring");
    if (circle.isPresent() == (ring != null)) {
      reading.problem(place, json, "file.shapeUnclear", ROUND, OUTLINED);
      return Optional.empty();
    }
    if (ring != null) {
      return RingReader.read(reading, ring, place.key("ring"))
          .map(r -> new FixedShape.Outlined(r.outline(), shape.kept()));
    }
    return circle.flatMap(c -> round(c, shape));
  }

  private Optional<FixedShape> round(Fields circle, Fields shape) {
    Map<String, Kept.Typed> typed = new LinkedHashMap<>();
    Json at = circle.need("at", "[x, y]");
    Optional<Point> centre =
        at == null
            ? Optional.empty()
            : ReadVertex.point(reading, at, circle.place().key("at"), "at", typed);
    circle.require("diameter", "\"8 in\"");
    Optional<Length> diameter = circle.length("diameter", Bounds.DIAMETER);
    circle.keepTyped(typed);
    return centre.isPresent() && diameter.isPresent()
        ? Optional.of(
            new FixedShape.Round(
                centre.get(), diameter.get(), RoundKept.joined(shape.kept(), circle.kept())))
        : Optional.empty();
  }
}
