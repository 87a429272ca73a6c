package org.jointwright.proof.read;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.jointwright.measure.UnitSystem;
import org.jointwright.text.Language;
import org.jointwright.text.Words;

/**
 * The phrases of the sheets in one language, as patterns. They are made of the very bundle that the
 * sheets are printed with, so a word is known here as soon as it is printed there.
 */
final class Phrases {
  /** A length as it is printed. */
  static final String LENGTH =
      "(?:[0-9½¼¾⅛⅜⅝⅞⁰¹²³⁴⁵⁶⁷⁸⁹⁄₀₁₂₃₄₅₆₇₈₉′\\-]*[0-9½¼¾⅛⅜⅝⅞₀₁₂₃₄₅₆₇₈₉]″"
          + "|[0-9]+\\.[0-9]+ m(?!m)|[0-9]+ mm)";

  /** A side by its corners. */
  static final String SIDE = "[A-Z]+–[A-Z]+";

  private static final String GAP = "\u0001";

  private final Words words;

  Phrases(Language language) {
    this.words = Words.of(language, UnitSystem.FEET_INCHES);
  }

  /** The words themselves. */
  String say(String key) {
    return words.say("sheet." + key).replace('\u00a0', ' ');
  }

  /** A phrase as a pattern: its places are what the groups match, each captured. */
  Pattern pattern(String key, String... groups) {
    return Pattern.compile(source(key, groups));
  }

  /** The same as the text of a pattern, to be put together with others. */
  String source(String key, String... groups) {
    Object[] gaps = new Object[groups.length];
    for (int i = 0; i < groups.length; i++) {
      gaps[i] = GAP + i + GAP;
    }
    String said = words.say("sheet." + key, gaps).replace('\u00a0', ' ');
    StringBuilder out = new StringBuilder();
    List<String> parts = Arrays.asList(said.split(GAP, -1));
    for (int i = 0; i < parts.size(); i++) {
      boolean isGap = i % 2 == 1;
      String part = parts.get(i);
      out.append(isGap ? "(" + groups[Integer.parseInt(part)] + ")" : Pattern.quote(part));
    }
    return out.toString();
  }
}
