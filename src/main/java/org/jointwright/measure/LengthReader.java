package org.jointwright.measure;

import java.util.List;
import org.jointwright.measure.LengthFormatException.Fault;

/**
 * Reads lengths as people write them: {@code 24'6}, {@code 24' 6 1/2"}, {@code 24ft 6 1/2in},
 * {@code 24′-6½″}, {@code 6 1/2"}, {@code 7.47 m}, {@code 7470 mm}, {@code 25 cm}; a number without
 * a unit, {@code 24.5}, is in the unit that the caller says. Straight and curly marks, any dash and
 * any space will do. A comma never will: it means a fraction to one reader and thousands to
 * another.
 */
public final class LengthReader {
  /** No length is written longer than this. */
  private static final int LONGEST = 60;

  private static final int INCHES_PER_FOOT = 12;

  private final String text;
  private final List<LengthToken> tokens;
  private int next;

  private LengthReader(String text) {
    this.text = text;
    this.tokens = new LengthScanner(text).scan();
  }

  /**
   * The length that {@code text} says; below zero when it starts with a minus sign.
   *
   * @param bare the unit of a number that has none
   * @throws LengthFormatException when it says none, or could say two; with what is wrong and where
   */
  public static Length read(String text, LengthUnit bare) {
    if (text.length() > LONGEST) {
      throw new LengthFormatException(text, Fault.TOO_LONG, LONGEST);
    }
    return new LengthReader(text).length(bare);
  }

  private Length length(LengthUnit bare) {
    if (tokens.isEmpty()) {
      throw new LengthFormatException(text, Fault.EMPTY, 0);
    }
    boolean isNegative = skipDash();
    LengthToken.Amount first = amount();
    double inches = inches(first, bare);
    if (next < tokens.size()) {
      throw fault(Fault.TRAILING);
    }
    return new Length(isNegative ? -inches : inches);
  }

  private double inches(LengthToken.Amount first, LengthUnit bare) {
    if (next == tokens.size()) {
      return first.value() * bare.inches();
    }
    if (!(tokens.get(next) instanceof LengthToken.Unit(int at, LengthUnit unit))) {
      throw fault(Fault.WHICH_IS_FEET);
    }
    next++;
    double inches = first.value() * unit.inches();
    if (unit != LengthUnit.FOOT || next == tokens.size()) {
      return inches;
    }
    if (!first.isWhole()) {
      throw fault(Fault.BROKEN_FEET);
    }
    skipDash();
    LengthToken.Amount beside = amount();
    if (beside.value() >= INCHES_PER_FOOT) {
      throw new LengthFormatException(text, Fault.INCHES_OVER_A_FOOT, beside.at());
    }
    if (next < tokens.size()
        && tokens.get(next) instanceof LengthToken.Unit(int where, LengthUnit small)
        && small == LengthUnit.INCH) {
      next++;
    }
    return inches + beside.value();
  }

  private boolean skipDash() {
    if (next < tokens.size() && tokens.get(next) instanceof LengthToken.Dash) {
      next++;
      return true;
    }
    return false;
  }

  private LengthToken.Amount amount() {
    if (next < tokens.size() && tokens.get(next) instanceof LengthToken.Amount number) {
      next++;
      return number;
    }
    throw fault(Fault.NO_NUMBER);
  }

  private LengthFormatException fault(Fault fault) {
    int at = next < tokens.size() ? tokens.get(next).at() : text.length();
    return new LengthFormatException(text, fault, at);
  }
}
