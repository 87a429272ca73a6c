package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jointwright.designer.state.Desk;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthReader;
import org.jointwright.measure.LengthUnit;
import org.jointwright.plan.EdgeSetting.Thickened;
import org.jointwright.plan.Sizes;

/** Reads figures that are typed into facts. */
final class Figures {
  /** No slab here is thicker; the plan format asks beyond it. Inches. */
  private static final double THICKEST = 24;

  private static final Pattern BOTH_WAYS = Pattern.compile("[xX×]");
  private static final Pattern NUMBER = Pattern.compile("[0-9./ ½¼¾⅛⅜⅝⅞]+");
  private static final Pattern ONE_UNIT =
      Pattern.compile("[0-9./ ½¼¾⅛⅜⅝⅞]+(?<unit>[\\p{L}'\"′″]+\\.?)");

  private Figures() {}

  /** A length across the site, a bare number in the unit of the measures shown; at least 0. */
  static Length site(String text, Desk desk) {
    Length read = LengthReader.read(text, desk.bare());
    if (read.inches() < 0) {
      throw new BadFigure("window.figure.below");
    }
    if (read.inches() > Sizes.LONGEST) {
      throw new BadFigure("window.figure.tooLong", Length.inches(Sizes.LONGEST));
    }
    return read;
  }

  /** A length across the site either way: with a minus before it, below 0. */
  static Length way(String text, Desk desk) {
    String bare = text.strip();
    boolean isBack = bare.startsWith("-") || bare.startsWith("−");
    Length read = site(isBack ? bare.substring(1) : bare, desk);
    return isBack ? Length.inches(-read.inches()) : read;
  }

  /** A length across the site above 0. */
  static Length side(String text, Desk desk) {
    Length read = site(text, desk);
    if (read.inches() <= 0.5) {
      throw new BadFigure("window.figure.none");
    }
    return read;
  }

  /** A small length, a bare number in inches or millimetres. */
  static Length small(String text, Desk desk) {
    LengthUnit bare = desk.bare().isMetric() ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    Length read = LengthReader.read(text, bare);
    if (read.inches() < 0) {
      throw new BadFigure("window.figure.below");
    }
    if (read.inches() > THICKEST) {
      throw new BadFigure("window.figure.tooThick", Length.inches(THICKEST));
    }
    return read;
  }

  /** An angle in degrees, with or without their sign, from {@code least} to {@code most}. */
  static double degrees(String text, double least, double most) {
    try {
      double read = Double.parseDouble(text.replace("°", "").strip());
      if (read >= least && read <= most) {
        return read;
      }
    } catch (NumberFormatException e) {
      // Said below, as for a figure that is out of bounds.
    }
    throw new BadFigure("window.figure.degrees", least, most);
  }

  /** How far a thickened edge reaches in. */
  static Length taper(String text, Desk desk) {
    Length read = site(text, desk);
    if (read.compareTo(Thickened.NARROWEST) < 0) {
      throw new BadFigure("window.figure.none");
    }
    if (read.compareTo(Thickened.WIDEST) > 0) {
      throw new BadFigure("window.figure.tooLong", Thickened.WIDEST);
    }
    return read;
  }

  /** How large an object is, inches: across a round one, or both ways, as in {@code 6 x 6}. */
  static List<Double> across(String text, Desk desk) {
    LengthUnit bare = desk.bare().isMetric() ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    String[] ways = BOTH_WAYS.split(text, 2);
    Matcher last = ONE_UNIT.matcher(ways[ways.length - 1].strip());
    if (ways.length > 1 && NUMBER.matcher(ways[0].strip()).matches() && last.matches()) {
      // A unit that is said once, at the end, is meant for both.
      ways[0] = ways[0].strip() + last.group("unit");
    }
    List<Double> read = new ArrayList<>();
    for (String way : ways) {
      double inches = LengthReader.read(way, bare).inches();
      if (inches <= 0) {
        throw new BadFigure("window.figure.none");
      }
      if (inches > Sizes.LONGEST) {
        throw new BadFigure("window.figure.tooLong", Length.inches(Sizes.LONGEST));
      }
      read.add(inches);
    }
    return List.copyOf(read);
  }

  /** A small length above 0. */
  static Length thickness(String text, Desk desk) {
    Length read = small(text, desk);
    if (read.inches() <= 0) {
      throw new BadFigure("window.figure.none");
    }
    return read;
  }
}
