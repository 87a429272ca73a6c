package org.jointwright.sheet.block;

import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Runs;
import org.jointwright.drawing.Typeface;
import org.jointwright.drawing.Weight;
import org.jointwright.shape.Point;

/** The kinds of lettering on a sheet, by the height of their capitals in millimetres. */
public enum Type {
  /** What an owner is shown. */
  HEADLINE(8, Weight.BOLD, 1.25),
  /** The sheet's name and number. */
  TITLE(6, Weight.HEAVY, 1.25),
  /** A corner's letter. */
  CORNER(6, Weight.HEAVY, 1),
  /** A corner's letter where it is tight. */
  CORNER_TIGHT(5, Weight.HEAVY, 1),
  /** A figure of a chain. */
  MARK(5, Weight.BOLD, 1.25),
  /** A figure of a chain where it is tight. */
  MARK_TIGHT(3.5, Weight.BOLD, 1.15),
  /** The head of a block. */
  HEAD(3.5, Weight.HEAVY, 1.25),
  /** A cell of a table. */
  TABLE(3.5, Weight.MEDIUM, 1.25),
  /** A number in a table. */
  TABLE_NUMBER(3.5, Weight.HEAVY, 1.25),
  /** An order to the crew. */
  ORDER(3.5, Weight.BOLD, 1.25),
  /** A slab's name on the plan. */
  NAME(3.5, Weight.SEMIBOLD, 1.25),
  /** Everything small. */
  NOTE(3, Weight.MEDIUM, 1.25);

  /** The height of a capital, millimetres. */
  public final double capital;

  private final Weight weight;
  private final double fraction;

  Type(double capital, Weight weight, double fraction) {
    this.capital = capital;
    this.weight = weight;
    this.fraction = fraction;
  }

  /** The size of the type, millimetres. */
  public double size() {
    return capital / Typeface.CAPITAL;
  }

  /** A level line of text. */
  public Mark.Words at(double x, double y, String text, Anchor anchor) {
    return turned(new Point(x, y), text, anchor, 0);
  }

  /** A line of text turned counter-clockwise as seen. */
  public Mark.Words turned(Point at, String text, Anchor anchor, double degrees) {
    return new Mark.Words(at, text, size(), weight, anchor, degrees, fraction, Role.TEXT);
  }

  /** How wide a text is. */
  public double width(String text) {
    return Runs.width(at(0, 0, text, Anchor.START));
  }
}
