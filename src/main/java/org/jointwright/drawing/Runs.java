package org.jointwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** How a line of text falls into runs of one size: vulgar fractions may stand larger. */
public final class Runs {
  private static final String FRACTIONS = "½⅓⅔¼¾⅛⅜⅝⅞";

  private Runs() {}

  /**
   * A run.
   *
   * @param text its text
   * @param larger whether it is a vulgar fraction
   */
  public record Run(String text, boolean larger) {}

  /** The runs of {@code text}; one run where nothing is to stand larger. */
  public static List<Run> of(String text) {
    List<Run> runs = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < text.length(); i++) {
      if (FRACTIONS.indexOf(text.charAt(i)) >= 0) {
        if (i > from) {
          runs.add(new Run(text.substring(from, i), false));
        }
        runs.add(new Run(text.substring(i, i + 1), true));
        from = i + 1;
      }
    }
    if (from < text.length()) {
      runs.add(new Run(text.substring(from), false));
    }
    return runs;
  }

  /** The width of a line of text. */
  public static double width(Mark.Words words) {
    Typeface face = Typeface.of(words.weight());
    double width = 0;
    for (Run run : of(words.text())) {
      width += face.width(run.text(), words.size() * (run.larger() ? words.fraction() : 1));
    }
    return width;
  }
}
