package org.jointwright.file;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jointwright.file.json.Json;
import org.jointwright.plan.Preference;

/** Reads and writes which layout is wanted: a word, or the edge to be lined up with. */
final class ChoiceFile {
  private static final String LINED_UP = "linedUpWith";

  private ChoiceFile() {}

  /** The choice; the shortest where none is made. */
  static Preference read(Reading reading, Fields jointing, Optional<RingReader.ReadRing> ring) {
    Json value = jointing.take("choice");
    if (value == null) {
      return Preference.SHORTEST;
    }
    Place place = jointing.place().key("choice");
    if (value instanceof Json.Members m) {
      return linedUp(reading, new Fields(reading, m, place), ring);
    }
    return Fields.choice(reading, place, value, Preference.Overall.values(), FileWords.CHOICE)
        .<Preference>map(p -> p)
        .orElse(Preference.SHORTEST);
  }

  private static Preference linedUp(
      Reading reading, Fields fields, Optional<RingReader.ReadRing> ring) {
    Json edge = fields.need(LINED_UP, "0");
    if (edge == null || ring.isEmpty()) {
      return Preference.SHORTEST;
    }
    Place place = fields.place().key(LINED_UP);
    String text = edge instanceof Json.Figure n ? n.text() : "";
    if (!EdgesReader.INDEX.matcher(text).matches()) {
      reading.problem(place, edge, "file.edgeNotANumber", Fields.shown(edge));
      return Preference.SHORTEST;
    }
    int given = Integer.parseInt(text);
    if (given >= ring.get().given()) {
      String last = Integer.toString(ring.get().given() - 1);
      reading.problem(place, edge, "file.edgeOutOfRange", text, last);
      return Preference.SHORTEST;
    }
    Integer now = ring.get().edges().get(given);
    return now == null ? Preference.SHORTEST : new Preference.LinedUpWith(now, fields.kept());
  }

  /** The choice as the file has it; empty for the usual one, which goes without saying. */
  static Optional<Json> json(Preference preference) {
    return switch (preference) {
      case Preference.Overall.SHORTEST -> Optional.empty();
      case Preference.Overall.SQUAREST ->
          Optional.of(Json.of(FileWords.CHOICE.apply(Preference.Overall.SQUAREST)));
      case Preference.LinedUpWith lined -> {
        Map<String, Json> members = new LinkedHashMap<>();
        members.put(LINED_UP, new Json.Figure(Integer.toString(lined.edge()), 0));
        PlanWriter.addUnknown(lined.kept(), members);
        yield Optional.of(Json.of(members));
      }
    };
  }
}
