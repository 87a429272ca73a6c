package org.jointwright.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthPrinter;
import org.jointwright.measure.LengthReader;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.Rounding;
import org.jointwright.proof.paper.Printed;

/**
 * A printed length that is an inch longer than it should be, or 25 mm.
 *
 * @param line the number of its line among the words of the sheet
 * @param from where it begins in the line
 * @param to where it ends
 * @param text what stands there instead
 */
record Slip(int line, int from, int to, String text) {
  private static final Pattern LENGTH =
      Pattern.compile(
          "[0-9½¼¾⅛⅜⅝⅞⁰¹²³⁴⁵⁶⁷⁸⁹⁄₀₁₂₃₄₅₆₇₈₉′\\-]*[0-9½¼¾⅛⅜⅝⅞₀₁₂₃₄₅₆₇₈₉]″|[0-9]+\\.[0-9]+ m(?!m)"
              + "|[0-9]+ mm");

  /** Every length of a sheet, each an inch longer. */
  static List<Slip> all(List<Printed> words) {
    List<Slip> all = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      Matcher m = LENGTH.matcher(words.get(i).text());
      while (m.find()) {
        all.add(new Slip(i, m.start(), m.end(), longer(m.group())));
      }
    }
    return all;
  }

  private static String longer(String length) {
    boolean metric = length.endsWith("m");
    double inches = LengthReader.read(length, LengthUnit.INCH).inches() + (metric ? 25 / 25.4 : 1);
    Rounding step = metric ? Rounding.MILLIMETRE : Rounding.SIXTEENTH_INCH;
    return LengthPrinter.print(Length.inches(inches), step);
  }

  /** The words with it. */
  List<Printed> in(List<Printed> words) {
    List<Printed> changed = new ArrayList<>(words);
    String is = words.get(line).text();
    changed.set(line, words.get(line).withText(is.substring(0, from) + text + is.substring(to)));
    return changed;
  }
}
