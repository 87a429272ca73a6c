package org.jointwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** A text in as many lines as its room asks for. */
public final class Wrapped {
  private Wrapped() {}

  /**
   * The lines, broken at spaces; a word longer than the room has a line of its own.
   *
   * @param text a text; spaces part its words
   * @param size the size of the type, in any unit
   * @param width how wide the room is, in the same unit
   */
  public static List<String> lines(String text, double size, double width) {
    Typeface face = Typeface.of(Weight.REGULAR);
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && face.width(longer, size) > width) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return lines;
  }

  /** The width of the longest of the lines, in the unit of the size; 0 without any. */
  public static double width(List<String> lines, double size) {
    Typeface face = Typeface.of(Weight.REGULAR);
    return lines.stream().mapToDouble(l -> face.width(l, size)).max().orElse(0);
  }
}
