package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Typeface;
import org.jointwright.drawing.View;
import org.jointwright.drawing.Weight;
import org.jointwright.reason.LikelyCrack;
import org.jointwright.reason.Reason;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/** Where it would likely crack without a joint: dashed, and said to be likely. */
final class CrackMarks {
  private static final double SIZE = 13;

  /** A line shorter than this has no room for a word beside it, px. */
  private static final double SHORTEST = 44;

  private CrackMarks() {}

  static List<Mark> of(Reason reason, View view, Words words) {
    List<Mark> marks = new ArrayList<>();
    for (LikelyCrack crack : reason.cracks()) {
      Path line = view.on(Path.straight(crack.from(), crack.to()));
      marks.add(new Mark.Line(line, 2.2, List.of(7.0, 5.0), Role.CRACK));
      if (line.length() >= SHORTEST) {
        label(line, words.say("window.why.likely"), marks);
      }
    }
    return marks;
  }

  /** The word stands beside the line near its far end, clear of the joint that is picked. */
  private static void label(Path line, String text, List<Mark> marks) {
    Point way = line.end().minus(line.start()).unit();
    Point aside = Math.abs(way.x()) > Math.abs(way.y()) ? new Point(0, -1) : new Point(1, 0);
    double wide = Typeface.of(Weight.MEDIUM).width(text, SIZE);
    Point middle =
        line.edges().getFirst().at(0.62).plus(aside.times(aside.x() == 0 ? 14 : 10 + wide / 2));
    marks.add(
        Mark.Area.of(
            Rings.rounded(middle.x() - wide / 2 - 4, middle.y() - 9, wide + 8, 18, 3), Role.PANEL));
    marks.add(
        Mark.Words.level(
            middle.plus(new Point(0, 4.6)), text, SIZE, Weight.MEDIUM, Anchor.MIDDLE, Role.CRACK));
  }
}
