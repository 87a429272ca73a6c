package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Typeface;
import org.jointwright.drawing.View;
import org.jointwright.drawing.Weight;
import org.jointwright.reason.LikelyCrack;
import org.jointwright.shape.Box;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/** Where it would likely crack without a joint: dashed, and said to be likely. */
final class CrackMarks {
  private static final double SIZE = 13;

  /** A line shorter than this has no room for a word beside it, px. */
  private static final double SHORTEST = 44;

  /** Half the height of the word’s strip, and how far it stands off the line; pixels. */
  private static final double HIGH = 9;

  private static final double CLEAR = 4;

  /** Where along the line the word may stand, the best first. */
  private static final double[] ALONG = {0.62, 0.5, 0.76, 0.38, 0.88, 0.25};

  /** A line is looked at in pieces of this length; pixels. */
  private static final double PIECE = 8;

  private CrackMarks() {}

  /**
   * The marks.
   *
   * @param joint the joint in question
   * @param taken what is written near it: no word goes there
   */
  static List<Mark> of(
      List<LikelyCrack> cracks, Path joint, List<Box> taken, View view, Words words) {
    List<Mark> marks = new ArrayList<>();
    List<Box> full = new ArrayList<>(taken);
    full.addAll(along(view.on(joint)));
    for (LikelyCrack crack : cracks) {
      Path line = view.on(Path.straight(crack.from(), crack.to()));
      marks.add(new Mark.Line(line, 2.2, List.of(7.0, 5.0), Role.CRACK));
      if (line.length() >= SHORTEST) {
        label(line, words.say("window.why.likely"), full, marks);
      }
    }
    return marks;
  }

  /** The room of a line, in pieces. */
  private static List<Box> along(Path line) {
    int pieces = (int) Math.ceil(line.length() / PIECE) + 1;
    return line.edges().stream()
        .flatMap(
            e ->
                IntStream.range(0, pieces)
                    .mapToObj(
                        k -> Box.of(e.at((double) k / pieces), e.at((k + 1.0) / pieces)).grown(2)))
        .toList();
  }

  /**
   * The word stands beside the line, best near its far end, clear of the joint that is picked and
   * of what is written; where nothing is free the line stands alone.
   */
  private static void label(Path line, String text, List<Box> full, List<Mark> marks) {
    Point way = line.end().minus(line.start()).unit();
    Point up = way.left().y() > 0 ? way.left().times(-1) : way.left();
    double half = Typeface.of(Weight.MEDIUM).width(text, SIZE) / 2 + 4;
    for (Point out : List.of(up, up.times(-1))) {
      for (double share : ALONG) {
        double off = CLEAR + Math.abs(out.x()) * half + Math.abs(out.y()) * HIGH;
        Point p = line.edges().getFirst().at(share).plus(out.times(off));
        Box box = new Box(p.x() - half, p.y() - HIGH, p.x() + half, p.y() + HIGH);
        if (full.stream().noneMatch(box::meets)) {
          full.add(box);
          marks.add(
              Mark.Area.of(
                  Rings.rounded(box.minX(), box.minY(), 2 * half, 2 * HIGH, 3), Role.PANEL));
          marks.add(
              Mark.Words.level(
                  p.plus(new Point(0, 4.6)), text, SIZE, Weight.MEDIUM, Anchor.MIDDLE, Role.CRACK));
          return;
        }
      }
    }
  }
}
