package org.jointwright.sheet.block;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Typeface;
import org.jointwright.drawing.Weight;
import org.jointwright.text.Units;

/** Breaks texts into lines, and keeps them to what the font can show. */
public final class Lines {
  /** The space that does not break. */
  private static final String BOUND = "\u00a0";

  /** The noise of arithmetic, millimetres. */
  private static final double NOISE = 1e-6;

  private Lines() {}

  /**
   * The text in lines no wider than {@code width}, broken at spaces, and at spaces that do not
   * break only where what they bind is too wide.
   */
  public static List<String> wrap(String text, Type type, double width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words(text, type, width)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && type.width(longer) > width + NOISE) {
        lines.add(line.toString());
        line = new StringBuilder(word);
      } else {
        line = new StringBuilder(longer);
      }
    }
    lines.add(line.toString());
    return lines;
  }

  private static List<String> words(String text, Type type, double width) {
    List<String> words = new ArrayList<>();
    for (String word : Units.words(text)) {
      boolean wide = type.width(word) > width;
      words.addAll(wide ? Units.words(word.replace(BOUND, " ")) : List.of(word));
    }
    return words;
  }

  /** The user's text, cut to a width with an ellipsis, what the font lacks shown as "?". */
  public static String fitting(String text, Type type, double width) {
    String shown = known(text);
    if (type.width(shown) <= width) {
      return shown;
    }
    String cut = shown;
    while (!cut.isEmpty() && type.width(cut + "…") > width) {
      cut = cut.substring(0, cut.offsetByCodePoints(cut.length(), -1)).stripTrailing();
    }
    return cut + "…";
  }

  /** The user's text with what the font lacks shown as "?". */
  public static String known(String text) {
    Typeface face = Typeface.of(Weight.REGULAR);
    StringBuilder out = new StringBuilder();
    text.strip()
        .codePoints()
        .map(c -> Character.isWhitespace(c) ? ' ' : c)
        .map(c -> face.has(c) && !Character.isISOControl(c) ? c : '?')
        .forEach(out::appendCodePoint);
    return out.toString();
  }
}
