package org.jointwright.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.file.json.Json;
import org.jointwright.measure.LengthUnit;
import org.jointwright.plan.KeepClear;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Ring;

/** Reads and writes the zones of a slab where no new joint may run. */
final class ZoneFile {
  private ZoneFile() {}

  static List<KeepClear> read(Reading reading, Fields slab, Optional<RingReader.ReadRing> outline) {
    List<KeepClear> zones = new ArrayList<>();
    List<Json> items = slab.list("keepClear");
    for (int i = 0; i < items.size(); i++) {
      Place place = slab.place().key("keepClear").item(i);
      Fields.of(reading, items.get(i), place)
          .flatMap(f -> zone(reading, f, outline))
          .ifPresent(zones::add);
    }
    return zones;
  }

  private static Optional<KeepClear> zone(
      Reading reading, Fields f, Optional<RingReader.ReadRing> outline) {
    String name = f.text("name");
    Json json = f.need("ring", "[[x, y], [x, y], [x, y]]");
    if (json == null) {
      return Optional.empty();
    }
    Optional<RingReader.ReadRing> ring = RingReader.read(reading, json, f.place().key("ring"));
    if (ring.isPresent()
        && outline.isPresent()
        && !meet(ring.get().outline().ring(), outline.get().outline().ring())) {
      // Told, not refused: a corner that was moved may have left the zone behind, and such a plan
      // must open again.
      reading.repair(f.place(), f.line(), "file.zoneOutside");
    }
    return ring.map(r -> new KeepClear(name, r.outline(), f.kept()));
  }

  private static boolean meet(Ring a, Ring b) {
    if (!a.box().meets(b.box())) {
      return false;
    }
    if (a.contains(b.vertices().getFirst()) || b.contains(a.vertices().getFirst())) {
      return true;
    }
    for (Edge e : a.edges()) {
      for (Edge f : b.edges()) {
        if (e.box().meets(f.box()) && !Crossing.of(e, f).isEmpty()) {
          return true;
        }
      }
    }
    return false;
  }

  static Json json(KeepClear zone, LengthUnit unit) {
    Map<String, Json> members = new LinkedHashMap<>();
    if (!zone.name().isEmpty()) {
      members.put("name", Json.of(zone.name()));
    }
    members.put("ring", SlabWriter.ring(zone.outline(), unit));
    PlanWriter.addUnknown(zone.kept(), members);
    return Json.of(members);
  }
}
