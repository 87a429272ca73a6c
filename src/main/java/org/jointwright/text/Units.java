package org.jointwright.text;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Keeps figures and their units together where a text goes on in another line: a figure alone at
 * its end, its unit below, is misread.
 */
public final class Units {
  /** The space that does not break. */
  private static final String BOUND = "\u00a0";

  private static final String FIGURE = "[0-9½¼¾⅛⅜⅝⅞]";

  /** The units that are printed behind a space, and then no more of a word. */
  private static final String UNIT =
      "(?:mm|cm|m²|m³|m|ft²|ft³|yd³|ft|in|kg|lb|tons?|t|L|gal|MPa|psi|h|%)(?![\\p{L}\\p{N}²³])";

  private static final Pattern BEFORE_UNIT =
      Pattern.compile("(?<=" + FIGURE + ") (?=" + UNIT + ")");

  private static final Pattern ELSEWHERE =
      Pattern.compile(" (?!" + UNIT + ")|(?<!" + FIGURE + ") ");

  private Units() {}

  /** The text, its figures bound to the units behind them by a space that does not break. */
  public static String bound(String text) {
    return BEFORE_UNIT.matcher(text).replaceAll(BOUND);
  }

  /** The words of a text, a figure and the unit behind it as one. */
  public static List<String> words(String text) {
    return List.of(ELSEWHERE.split(text, -1));
  }
}
