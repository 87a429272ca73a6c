package org.jointwright.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.file.json.Json;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthUnit;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FeatureKind;

/** Reads and writes what people see along an edge. */
final class FeatureFile {
  /** How far a feature may run past its edge by rounding, inches: the rules' length tolerance. */
  private static final double PAST = 0.5;

  private static final Length LEAST = Length.inches(Feature.SHORTEST);

  private FeatureFile() {}

  /** The features of an edge that has been read, whatever its length. */
  static List<Feature> read(Reading reading, Fields edge) {
    List<Feature> features = new ArrayList<>();
    List<Json> items = edge.list("features");
    for (int i = 0; i < items.size(); i++) {
      Place place = edge.place().key("features").item(i);
      Fields.of(reading, items.get(i), place)
          .flatMap(f -> feature(reading, f))
          .ifPresent(features::add);
    }
    return features;
  }

  private static Optional<Feature> feature(Reading reading, Fields f) {
    int before = reading.problemCount();
    Optional<FeatureKind> kind = f.choice("kind", FeatureKind.values(), FileWords.FEATURE_KIND);
    Optional<Length> from = distance(f, "from", "2 ft");
    Optional<Length> to = distance(f, "to", "18 ft");
    if (from.isEmpty() || to.isEmpty() || reading.problemCount() > before) {
      return Optional.empty();
    }
    if (to.get().inches() - from.get().inches() < Feature.SHORTEST) {
      reading.problem(f.place(), f.line(), "file.featureTooShort", from.get(), to.get(), LEAST);
      return Optional.empty();
    }
    return Optional.of(
        new Feature(
            kind.orElse(FeatureKind.OTHER), from.get().inches(), to.get().inches(), f.kept()));
  }

  private static Optional<Length> distance(Fields f, String name, String example) {
    f.require(name, '"' + example + '"');
    return f.length(name, Bounds.ALONG_EDGE);
  }

  /**
   * The setting with its features on the edge it belongs to: run the other way where the ring was
   * turned; a feature that runs past the edge's end is a problem.
   */
  static EdgeSetting placed(
      Reading reading, Place place, int line, EdgeSetting setting, double length, boolean turned) {
    List<Feature> features = new ArrayList<>();
    for (int i = 0; i < setting.features().size(); i++) {
      Feature f = setting.features().get(i);
      if (f.to() > length + PAST || length - f.from() < Feature.SHORTEST) {
        reading.problem(
            place.key("features").item(i),
            line,
            "file.featureBeyondEdge",
            Length.inches(f.to()),
            Length.inches(length));
      } else {
        features.add(turned ? f.turned(length) : f);
      }
    }
    return setting.withFeatures(features);
  }

  static Json json(Feature feature, LengthUnit unit) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("kind", Json.of(FileWords.FEATURE_KIND.apply(feature.kind())));
    members.put("from", Lengths.spacing(feature.kept(), "from", feature.from(), unit));
    members.put("to", Lengths.spacing(feature.kept(), "to", feature.to(), unit));
    PlanWriter.addUnknown(feature.kept(), members);
    return Json.of(members);
  }
}
