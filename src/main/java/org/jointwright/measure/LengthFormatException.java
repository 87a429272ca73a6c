package org.jointwright.measure;

/** A text that should have been a length and is not. */
public final class LengthFormatException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** What is wrong with the text. */
  public enum Fault {
    /** There is nothing in it. */
    EMPTY,
    /** It is longer than any length is written. */
    TOO_LONG,
    /** A number should stand here. */
    NO_NUMBER,
    /** A comma among the figures: fractions are written after a point, thousands without a mark. */
    COMMA,
    /** A fraction over nothing, or with a part missing. */
    BAD_FRACTION,
    /** A word or a sign that is no unit of length. */
    UNKNOWN_UNIT,
    /** Two numbers, and nothing says which are feet and which are inches. */
    WHICH_IS_FEET,
    /** Part of a foot, and inches besides. */
    BROKEN_FEET,
    /** Twelve inches or more beside feet. */
    INCHES_OVER_A_FOOT,
    /** Something stands after the length. */
    TRAILING
  }

  private final String text;
  private final Fault fault;
  private final int position;

  LengthFormatException(String text, Fault fault, int position) {
    super(fault + " at " + position + " in \"" + text + '"');
    this.text = text;
    this.fault = fault;
    this.position = position;
  }

  /** The text that was read. */
  public String text() {
    return text;
  }

  /** What is wrong. */
  public Fault fault() {
    return fault;
  }

  /** Where in the text, counted in characters from 0. */
  public int position() {
    return position;
  }

  /**
   * The key of the message for the user; its arguments are {@link #text}, the place counted from 1,
   * and what stands there.
   */
  public String key() {
    return switch (fault) {
      case EMPTY -> "length.empty";
      case TOO_LONG -> "length.tooLong";
      case NO_NUMBER -> "length.noNumber";
      case COMMA -> "length.comma";
      case BAD_FRACTION -> "length.badFraction";
      case UNKNOWN_UNIT -> "length.unknownUnit";
      case WHICH_IS_FEET -> "length.whichIsFeet";
      case BROKEN_FEET -> "length.brokenFeet";
      case INCHES_OVER_A_FOOT -> "length.inchesOverAFoot";
      case TRAILING -> "length.trailing";
    };
  }

  /** The arguments of the message. */
  public Object[] arguments() {
    String rest = position < text.length() ? text.substring(position).strip() : "";
    return new Object[] {text.strip(), position + 1, rest};
  }
}
