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
  /**
   * A bare number below this, where millimetres are meant, is nearly always centimetres. This
   * program’s own figure, no source.
   */
  private static final double FEW = 25;

  private static final Pattern BOTH_WAYS = Pattern.compile("[xX×]");
  private static final Pattern BARE = Pattern.compile("[0-9]{1,3}(\\.[0-9]{1,6})?");
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
    if (read.inches() > Sizes.THICKEST) {
      throw new BadFigure("window.figure.tooThick", Length.inches(Sizes.THICKEST));
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
      whichUnit(way, desk);
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

  /** How thick a slab is. */
  static Length thickness(String text, Desk desk) {
    Length read = layer(text, desk);
    if (read.inches() < Sizes.THINNEST) {
      throw new BadFigure("window.figure.tooThin", Length.inches(Sizes.THINNEST));
    }
    return read;
  }

  /** How deep a layer is, of a slab or beneath it; 0 where there is none. */
  static Length layer(String text, Desk desk) {
    whichUnit(text, desk);
    return small(text, desk);
  }

  /** Who thinks in centimetres writes 12 for a slab: asked rather than taken for 12 mm. */
  private static void whichUnit(String text, Desk desk) {
    String bare = text.strip();
    if (desk.bare().isMetric() && BARE.matcher(bare).matches()) {
      double number = Double.parseDouble(bare);
      if (number > 0 && number < FEW) {
        throw new BadFigure("window.figure.whichUnit", bare);
      }
    }
  }
}
