package org.jointwright.measure;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads volumes as people write them: {@code 9 yd3}, {@code 9 cu yd}, {@code 9 yards}, {@code 7
 * m³}, {@code 240 cu ft}. Yards alone are cubic yards, as they are at any plant. A number without a
 * unit is in the unit that the caller says. Written with a point; a comma is refused, as in
 * lengths.
 */
public final class VolumeReader {
  private static final Pattern FORM =
      Pattern.compile("([0-9]{1,12}(?:\\.[0-9]{0,30})?|\\.[0-9]{1,30})\\s*(.*)");

  private static final Map<String, VolumeUnit> WORDS =
      Map.ofEntries(
          Map.entry("yd3", VolumeUnit.CUBIC_YARD),
          Map.entry("yd", VolumeUnit.CUBIC_YARD),
          Map.entry("yds", VolumeUnit.CUBIC_YARD),
          Map.entry("yard", VolumeUnit.CUBIC_YARD),
          Map.entry("yards", VolumeUnit.CUBIC_YARD),
          Map.entry("cy", VolumeUnit.CUBIC_YARD),
          Map.entry("m3", VolumeUnit.CUBIC_METRE),
          Map.entry("cubic m", VolumeUnit.CUBIC_METRE),
          Map.entry("cubic metre", VolumeUnit.CUBIC_METRE),
          Map.entry("cubic metres", VolumeUnit.CUBIC_METRE),
          Map.entry("cubic meter", VolumeUnit.CUBIC_METRE),
          Map.entry("cubic meters", VolumeUnit.CUBIC_METRE),
          Map.entry("cubic yd", VolumeUnit.CUBIC_YARD),
          Map.entry("cubic yds", VolumeUnit.CUBIC_YARD),
          Map.entry("cubic yard", VolumeUnit.CUBIC_YARD),
          Map.entry("cubic yards", VolumeUnit.CUBIC_YARD),
          Map.entry("ft3", VolumeUnit.CUBIC_FOOT),
          Map.entry("cubic ft", VolumeUnit.CUBIC_FOOT),
          Map.entry("cubic foot", VolumeUnit.CUBIC_FOOT),
          Map.entry("cubic feet", VolumeUnit.CUBIC_FOOT));

  private VolumeReader() {}

  /**
   * The volume that {@code text} says; empty when it says none.
   *
   * @param bare the unit of a number that has none
   */
  public static Optional<Volume> read(String text, VolumeUnit bare) {
    Matcher m = FORM.matcher(text.strip());
    if (!m.matches()) {
      return Optional.empty();
    }
    String word =
        m.group(2)
            .toLowerCase(Locale.ROOT)
            .replace('³', '3')
            .replaceAll("^cu\\b\\.?\\s*", "cubic ")
            .replaceAll("[\\s\\u00a0]+", " ")
            .replaceAll("\\.$", "");
    VolumeUnit unit = word.isEmpty() ? bare : WORDS.get(word);
    return unit == null
        ? Optional.empty()
        : Optional.of(Volume.of(Double.parseDouble(m.group(1)), unit));
  }
}
