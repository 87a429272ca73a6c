package org.jointwright.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jointwright.measure.LengthFormatException.Fault;
import org.jspecify.annotations.Nullable;

/** Cuts a written length into numbers, units and dashes. */
final class LengthScanner {
  private static final String FOOT_MARKS = "'′’‘`´ʹʼ";
  private static final String INCH_MARKS = "\"″”“ʺ";
  private static final String DASHES = "-–—‐‑−";

  private static final Map<String, LengthUnit> WORDS =
      Map.ofEntries(
          Map.entry("ft", LengthUnit.FOOT),
          Map.entry("foot", LengthUnit.FOOT),
          Map.entry("feet", LengthUnit.FOOT),
          Map.entry("in", LengthUnit.INCH),
          Map.entry("inch", LengthUnit.INCH),
          Map.entry("inches", LengthUnit.INCH),
          Map.entry("mm", LengthUnit.MILLIMETRE),
          Map.entry("cm", LengthUnit.CENTIMETRE),
          Map.entry("m", LengthUnit.METRE),
          Map.entry("metre", LengthUnit.METRE),
          Map.entry("metres", LengthUnit.METRE),
          Map.entry("meter", LengthUnit.METRE),
          Map.entry("meters", LengthUnit.METRE));

  private final String text;
  private int next;

  LengthScanner(String text) {
    this.text = text;
  }

  List<LengthToken> scan() {
    List<LengthToken> tokens = new ArrayList<>();
    skipSpace();
    while (next < text.length()) {
      tokens.add(token());
      skipSpace();
    }
    return tokens;
  }

  private LengthToken token() {
    int at = next;
    char c = text.charAt(at);
    if (DASHES.indexOf(c) >= 0) {
      next++;
      return new LengthToken.Dash(at);
    }
    if (startsNumber(at)) {
      return amount();
    }
    if (c == ',') {
      throw fault(Fault.COMMA, at);
    }
    return new LengthToken.Unit(at, unit());
  }

  private LengthUnit unit() {
    int at = next;
    char c = text.charAt(at);
    if (INCH_MARKS.indexOf(c) >= 0) {
      next++;
      return LengthUnit.INCH;
    }
    if (FOOT_MARKS.indexOf(c) >= 0) {
      next++;
      if (FOOT_MARKS.indexOf(peek()) >= 0) {
        next++;
        return LengthUnit.INCH;
      }
      return LengthUnit.FOOT;
    }
    while (Character.isLetter(peek())) {
      next++;
    }
    LengthUnit unit = WORDS.get(text.substring(at, next).toLowerCase(Locale.ROOT));
    if (unit == null) {
      throw fault(Fault.UNKNOWN_UNIT, at);
    }
    if (peek() == '.') {
      next++;
    }
    return unit;
  }

  private LengthToken.Amount amount() {
    int at = next;
    Double fraction = fraction();
    if (fraction != null) {
      return new LengthToken.Amount(at, fraction, false);
    }
    String digits = digits();
    if (peek() == '.') {
      next++;
      String decimals = digits();
      if (digits.isEmpty() && decimals.isEmpty()) {
        throw fault(Fault.NO_NUMBER, at);
      }
      refuseComma();
      return new LengthToken.Amount(at, Double.parseDouble(digits + "." + decimals + "0"), false);
    }
    refuseComma();
    double whole = Double.parseDouble(digits);
    int end = next;
    skipSpace();
    if (DASHES.indexOf(peek()) >= 0) {
      next++;
      skipSpace();
    }
    int fractionAt = next;
    Double part = fraction();
    if (part == null) {
      next = end;
      return new LengthToken.Amount(at, whole, true);
    }
    if (part >= 1) {
      throw fault(Fault.BAD_FRACTION, fractionAt);
    }
    return new LengthToken.Amount(at, whole + part, false);
  }

  /** Reads ½, 1/2 or ¹⁄₂ if one stands here; else moves nothing and gives null. */
  private @Nullable Double fraction() {
    int at = next;
    Fraction glyph = Fraction.ofGlyph(peek());
    if (glyph != null) {
      next++;
      return glyph.value();
    }
    boolean isRaised = Fraction.raisedDigit(peek()) >= 0;
    String above = isRaised ? raised() : digits();
    skipSpace();
    if (above.isEmpty() || !(peek() == '/' || peek() == Fraction.SLASH)) {
      if (isRaised) {
        throw fault(Fault.BAD_FRACTION, at);
      }
      next = at;
      return null;
    }
    next++;
    skipSpace();
    String below = Fraction.loweredDigit(peek()) >= 0 ? lowered() : digits();
    if (below.isEmpty() || Double.parseDouble(below) == 0) {
      throw fault(Fault.BAD_FRACTION, at);
    }
    return Double.parseDouble(above) / Double.parseDouble(below);
  }

  private String digits() {
    int from = next;
    while (isDigit(peek())) {
      next++;
    }
    return text.substring(from, next);
  }

  private String raised() {
    StringBuilder out = new StringBuilder();
    for (int digit; (digit = Fraction.raisedDigit(peek())) >= 0; next++) {
      out.append(digit);
    }
    return out.toString();
  }

  private String lowered() {
    StringBuilder out = new StringBuilder();
    for (int digit; (digit = Fraction.loweredDigit(peek())) >= 0; next++) {
      out.append(digit);
    }
    return out.toString();
  }

  private void refuseComma() {
    if (peek() == ',') {
      throw fault(Fault.COMMA, next);
    }
  }

  private boolean startsNumber(int at) {
    char c = text.charAt(at);
    return isDigit(c) || c == '.' || Fraction.raisedDigit(c) >= 0 || Fraction.ofGlyph(c) != null;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** The character that stands here; the null character at the end. */
  private char peek() {
    return next < text.length() ? text.charAt(next) : '\0';
  }

  private void skipSpace() {
    while (Character.isWhitespace(peek()) || Character.isSpaceChar(peek())) {
      next++;
    }
  }

  private LengthFormatException fault(Fault fault, int at) {
    return new LengthFormatException(text, fault, at);
  }
}
