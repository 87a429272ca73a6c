package org.jointwright.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jointwright.file.json.Json;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.EdgeSetting.Thickened;
import org.jointwright.plan.Feature;

/** Reads what the edges of a ring are against, and numbers them as the mended ring does. */
final class EdgesReader {
  /** The number of an edge. */
  static final Pattern INDEX = Pattern.compile("0|[1-9][0-9]{0,5}");

  private EdgesReader() {}

  static Map<Integer, EdgeSetting> read(
      Reading reading, Optional<Fields> edges, Optional<RingReader.ReadRing> ring) {
    Map<Integer, EdgeSetting> settings = new TreeMap<>();
    if (edges.isEmpty()) {
      return settings;
    }
    Fields fields = edges.get();
    for (Map.Entry<String, Json> e : fields.members().entrySet()) {
      Place place = fields.place().key(e.getKey());
      Optional<EdgeSetting> setting = setting(reading, e.getValue(), place);
      if (!INDEX.matcher(e.getKey()).matches()) {
        reading.problem(place, e.getValue(), "file.edgeNotANumber", e.getKey());
      } else if (setting.isPresent() && ring.isPresent()) {
        put(reading, settings, place, e, setting.get(), ring.get());
      }
    }
    return settings;
  }

  private static void put(
      Reading reading,
      Map<Integer, EdgeSetting> settings,
      Place place,
      Map.Entry<String, Json> entry,
      EdgeSetting setting,
      RingReader.ReadRing ring) {
    int given = Integer.parseInt(entry.getKey());
    if (given >= ring.given()) {
      String last = Integer.toString(ring.given() - 1);
      reading.problem(place, entry.getValue(), "file.edgeOutOfRange", entry.getKey(), last);
      return;
    }
    Integer now = ring.edges().get(given);
    if (now != null) {
      double length = ring.outline().ring().edges().get(now).length();
      int line = entry.getValue().line();
      settings.put(now, FeatureFile.placed(reading, place, line, setting, length, ring.turned()));
    }
  }

  private static Optional<EdgeSetting> setting(Reading reading, Json json, Place place) {
    if (!(json instanceof Json.Members m)) {
      return Fields.choice(reading, place, json, Against.values(), FileWords.AGAINST)
          .map(EdgeSetting::against);
    }
    Fields fields = new Fields(reading, m, place);
    int before = reading.problemCount();
    Optional<Against> against = fields.choice("against", Against.values(), FileWords.AGAINST);
    boolean floats = fields.flag("floats");
    Optional<Thickened> thickened =
        fields
            .object("thickened")
            .map(
                f ->
                    new Thickened(
                        f.length("depth", Bounds.THICKENED),
                        f.length("over", Bounds.TAPER),
                        f.kept()));
    List<Feature> features = FeatureFile.read(reading, fields);
    return reading.problemCount() > before
        ? Optional.empty()
        : Optional.of(
            new EdgeSetting(
                against.orElse(Against.OPEN), floats, thickened, features, fields.kept()));
  }
}
