package org.jointwright.takeoff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jointwright.measure.Volume;
import org.jointwright.plan.Slab.Finishing;

/**
 * The concrete by its color. Each color comes in trucks of its own, so each is rounded up by itself
 * (common practice, no source). What a color weighs or costs is not known here: the plant is asked.
 */
final class Mixes {
  /** Stands for concrete without color: no color in a plan has a line break in it. */
  private static final String PLAIN = "\n";

  private final Map<String, Double> plain = new LinkedHashMap<>();

  /** What each color is called where it was first named. */
  private final Map<String, String> named = new HashMap<>();

  /** Counts concrete of a slab, cubic inches. */
  void add(Finishing finishing, double inches) {
    String key = finishing.isMixColored() ? finishing.colorKey() : PLAIN;
    named.putIfAbsent(key, finishing.color());
    plain.merge(key, inches, Double::sum);
  }

  /**
   * A line for each mix, none where all is without color.
   *
   * @param over what is ordered over the plan; each mix bears its share by volume
   * @param roundedUp what a plant sells for a wanted volume
   */
  List<Line> lines(Volume over, UnaryOperator<Volume> roundedUp) {
    List<Line> lines = new ArrayList<>();
    if (plain.keySet().equals(java.util.Set.of(PLAIN))) {
      return lines;
    }
    double all = plain.values().stream().mapToDouble(v -> v).sum();
    plain.forEach(
        (color, inches) -> {
          Volume share = new Volume(over.cubicInches() * (all > 0 ? inches / all : 0));
          Volume wanted = new Volume(inches + share.cubicInches());
          Volume ordered = roundedUp.apply(wanted);
          boolean isPlain = color.equals(PLAIN);
          lines.add(
              new Line(
                  isPlain ? Item.PLAIN : Item.COLORED,
                  isPlain ? List.of() : List.of(named.getOrDefault(color, color)),
                  new Amount.OfVolume(ordered),
                  List.of(Step.of("mix", new Volume(inches), share, wanted, ordered)),
                  List.of()));
        });
    return lines;
  }
}
