package org.jointwright.proof.build;

import java.util.Optional;
import org.jointwright.proof.read.Figure;
import org.jointwright.proof.read.Place;

/**
 * Something on a sheet that cannot be right.
 *
 * @param kind what is wrong
 * @param place where it stands, as near as is known
 * @param about what does not close, for {@link Kind#OPEN}
 * @param text the figure or the words as printed, or what they are about
 * @param printed as printed, inches; 0 where it is no length
 * @param should what all else on the sheet says instead, where that is one length, inches
 * @param allowed how much rounding allows, inches
 */
public record Fault(
    Kind kind,
    Optional<Place> place,
    Optional<Miss.Kind> about,
    String text,
    double printed,
    Optional<Double> should,
    double allowed) {
  /** What is wrong. */
  public enum Kind {
    /** Words that say nothing. */
    RIDDLE,
    /** A joint or a strip that is told from what is not on the sheet. */
    LOST,
    /** A figure that one other figure, put in its place, would make close. */
    FIGURE,
    /** A length that does not close, and nothing says whose fault it is. */
    OPEN,
    /** A figure on the plan that no side has. */
    STRAY,
    /** A mark that is not on the plan, or not among those listed with its side. */
    MISSING,
    /** The corner of a box-out on a side, whose mark is not on the plan. */
    RIM,
    /** A depth that no slab has. */
    DEPTH,
    /** A depth to dig that is not thickness and base together. */
    DEEP,
    /** A figure of the scale bar that is not at an equal step. */
    STEP,
    /** Where a joint ends on another, and that one's list does not have it. */
    UNLISTED,
    /** A size of cuts that the orders do not tell. */
    SIZE,
    /** A width of filler that is told in one place only. */
    WIDTH,
    /** A side that an order names and the plan has not. */
    NO_SIDE,
    /** A corner that a list names and the plan has not. */
    NO_LETTER
  }

  static Fault of(Kind kind, Figure f, double should, double allowed) {
    return new Fault(
        kind,
        Optional.of(f.place()),
        Optional.empty(),
        f.text(),
        f.inches(),
        Optional.of(should),
        allowed);
  }

  static Fault of(Kind kind, Figure f) {
    return new Fault(
        kind, Optional.of(f.place()), Optional.empty(), f.text(), f.inches(), Optional.empty(), 0);
  }

  static Fault of(Kind kind, Place place, String text) {
    return new Fault(kind, Optional.of(place), Optional.empty(), text, 0, Optional.empty(), 0);
  }

  static Fault of(Kind kind, String text) {
    return new Fault(kind, Optional.empty(), Optional.empty(), text, 0, Optional.empty(), 0);
  }
}
