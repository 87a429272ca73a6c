package org.jointwright.sheet.readback;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jointwright.measure.LengthReader;
import org.jointwright.measure.LengthUnit;
import org.jointwright.sheet.readback.Reading.Where;

/** The phrases of an English cut sheet. */
final class Grammar {
  static final String LENGTH =
      "(?:[0-9½¼¾⅛⅜⅝⅞⁰¹²³⁴⁵⁶⁷⁸⁹⁄₀₁₂₃₄₅₆₇₈₉′\\-]+″|[0-9]+\\.[0-9]+ m(?!m)|[0-9]+ mm)";
  static final String SIDE = "[A-Z]+–[A-Z]+";
  private static final String OFF =
      "(" + LENGTH + ") (" + SIDE + ")(?:, (left|right) (" + LENGTH + "))?";

  private Grammar() {}

  static double length(String text) {
    return LengthReader.read(text, LengthUnit.INCH).inches();
  }

  /** A figure of the scale bar, which may be feet or metres alone. */
  static double barLength(String text) {
    return length(text.endsWith("′") ? text + "-0″" : text);
  }

  static boolean isLength(String text) {
    return text.matches(LENGTH);
  }

  static List<String> lengths(String text) {
    List<String> found = new ArrayList<>();
    Matcher m = Pattern.compile(LENGTH).matcher(text);
    while (m.find()) {
      found.add(m.group());
    }
    return found;
  }

  static Where where(String text) {
    Matcher corner = Pattern.compile("corner ([A-Z]+)").matcher(text);
    if (corner.matches()) {
      return new Where.Corner(corner.group(1));
    }
    Matcher boxOut = Pattern.compile("box-out ([0-9]+)").matcher(text);
    if (boxOut.matches()) {
      return new Where.AtBoxOut(Integer.parseInt(boxOut.group(1)));
    }
    Matcher joint = Pattern.compile("(" + LENGTH + ") joint ([0-9]+)").matcher(text);
    if (joint.matches()) {
      return new Where.OnJoint(Integer.parseInt(joint.group(2)), length(joint.group(1)));
    }
    Matcher end = Pattern.compile("(start|end) of joint ([0-9]+)").matcher(text);
    if (end.matches()) {
      double along = end.group(1).equals("start") ? 0 : Double.POSITIVE_INFINITY;
      return new Where.OnJoint(Integer.parseInt(end.group(2)), along);
    }
    Matcher off = Pattern.compile(OFF).matcher(text);
    if (off.matches()) {
      double along = length(off.group(1));
      if (off.group(3) == null) {
        return new Where.Mark(off.group(2), along);
      }
      double left = length(off.group(4)) * (off.group(3).equals("left") ? 1 : -1);
      return new Where.Off(off.group(2), along, left);
    }
    throw new AssertionError("not understood: " + text);
  }
}
