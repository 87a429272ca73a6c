package org.jointwright.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.file.json.Json;
import org.jointwright.measure.Length;
import org.jointwright.plan.Sizes;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Touching;

/** Where the openings of one slab may lie: inside it, clear of its edge and of each other. */
final class OpeningPlaces {
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
      if (Touching.is(outline.get(), opening, Sizes.CLEAR)) {
        key = "file.openingCrossesEdge";
      } else if (!outline.get().contains(opening.vertices().getFirst())) {
        key = "file.openingOutside";
      }
    }
    if (!key.isEmpty()) {
      reading.problem(place, json, key, Length.inches(Sizes.CLEAR));
      return false;
    }
    for (int i = 0; i < before.size(); i++) {
      if (Touching.orHolding(before.get(i), opening, Sizes.CLEAR)) {
        reading.problem(place, json, "file.openingsOverlap", Integer.toString(i));
        return false;
      }
    }
    before.add(opening);
    return true;
  }
}
