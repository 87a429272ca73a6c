package org.jointwright.measure;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A fraction of an inch in lowest terms, and the characters that fractions are written with.
 *
 * @param numerator above the bar
 * @param denominator below the bar, over 0
 */
record Fraction(int numerator, int denominator) {
  static final char SLASH = '\u2044';
  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  private static final String LOWERED = "₀₁₂₃₄₅₆₇₈₉";

  private static final Map<Character, Fraction> WHOLE_GLYPHS =
      Map.ofEntries(
          Map.entry('½', new Fraction(1, 2)),
          Map.entry('¼', new Fraction(1, 4)),
          Map.entry('¾', new Fraction(3, 4)),
          Map.entry('⅛', new Fraction(1, 8)),
          Map.entry('⅜', new Fraction(3, 8)),
          Map.entry('⅝', new Fraction(5, 8)),
          Map.entry('⅞', new Fraction(7, 8)),
          Map.entry('⅓', new Fraction(1, 3)),
          Map.entry('⅔', new Fraction(2, 3)));

  /** The fraction in lowest terms. */
  static Fraction of(int numerator, int denominator) {
    int divisor = greatestCommonDivisor(numerator, denominator);
    return new Fraction(numerator / divisor, denominator / divisor);
  }

  /** The fraction that one character such as ½ stands for, or null when it stands for none. */
  static @Nullable Fraction ofGlyph(char c) {
    return WHOLE_GLYPHS.get(c);
  }

  /** The digit that a raised character such as ³ shows, or -1. */
  static int raisedDigit(char c) {
    return RAISED.indexOf(c);
  }

  /** The digit that a lowered character such as ₆ shows, or -1. */
  static int loweredDigit(char c) {
    return LOWERED.indexOf(c);
  }

  double value() {
    return (double) numerator / denominator;
  }

  /** One glyph where there is one, else raised and lowered figures round a fraction slash. */
  String print() {
    for (Map.Entry<Character, Fraction> glyph : WHOLE_GLYPHS.entrySet()) {
      if (glyph.getValue().equals(this)) {
        return glyph.getKey().toString();
      }
    }
    return written(numerator, RAISED) + SLASH + written(denominator, LOWERED);
  }

  String plain() {
    return numerator + "/" + denominator;
  }

  private static String written(int number, String figures) {
    StringBuilder out = new StringBuilder();
    for (char digit : Integer.toString(number).toCharArray()) {
      out.append(figures.charAt(digit - '0'));
    }
    return out.toString();
  }

  private static int greatestCommonDivisor(int a, int b) {
    return b == 0 ? a : greatestCommonDivisor(b, a % b);
  }
}
