package org.jointwright.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.file.json.Json;
import org.jointwright.measure.Length;
import org.jointwright.shape.Box;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Ring;

/** Where the openings of one slab may lie: inside it, clear of its edge and of each other. */
final class OpeningPlaces {
  /** Nearer than this two lines are one on the ground, inches. */
  private static final double CLEAR = 0.5;

  private final Reading reading;
  private final Optional<Ring> outline;
  private final List<Ring> before = new ArrayList<>();

  OpeningPlaces(Reading reading, Optional<Ring> outline) {
    this.reading = reading;
    this.outline = outline;
  }

  /** Whether another opening fits; a problem is reported when it does not. */
  boolean fits(Ring opening, Place place, Json json) {
    String key = "";
    if (outline.isPresent()) {
      if (touches(outline.get(), opening)) {
        key = "file.openingCrossesEdge";
      } else if (!outline.get().contains(opening.vertices().getFirst())) {
        key = "file.openingOutside";
      }
    }
    if (!key.isEmpty()) {
      reading.problem(place, json, key, Length.inches(CLEAR));
      return false;
    }
    for (int i = 0; i < before.size(); i++) {
      if (overlap(before.get(i), opening)) {
        reading.problem(place, json, "file.openingsOverlap", Integer.toString(i));
        return false;
      }
    }
    before.add(opening);
    return true;
  }

  private static boolean overlap(Ring a, Ring b) {
    return a.box().grown(CLEAR).meets(b.box())
        && (touches(a, b)
            || a.contains(b.vertices().getFirst())
            || b.contains(a.vertices().getFirst()));
  }

  private static boolean touches(Ring a, Ring b) {
    Box reach = b.box().grown(CLEAR);
    for (Edge e : a.edges()) {
      Box box = e.box().grown(CLEAR);
      if (!box.meets(reach)) {
        continue;
      }
      for (Edge f : b.edges()) {
        if (box.meets(f.box()) && touches(e, f)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean touches(Edge e, Edge f) {
    return !Crossing.of(e, f).isEmpty()
        || e.distance(f.start()) < CLEAR
        || f.distance(e.start()) < CLEAR
        || e.distance(f.end()) < CLEAR
        || f.distance(e.end()) < CLEAR;
  }
}
