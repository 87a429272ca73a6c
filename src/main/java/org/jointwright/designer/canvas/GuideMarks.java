package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.designer.sketch.Guide;
import org.jointwright.designer.state.Viewport;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.TapeMarks;
import org.jointwright.drawing.Typeface;
import org.jointwright.drawing.View;
import org.jointwright.drawing.Weight;
import org.jointwright.measure.Length;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/** A string line that draws the pencil, its word, and its tape figure. */
final class GuideMarks {
  private static final double LABEL = 14;
  private static final double BEYOND = 60;

  private GuideMarks() {}

  static List<Mark> of(Guide guide, Viewport viewport, Words words) {
    View view = viewport.view();
    List<Mark> marks = new ArrayList<>();
    Point from = view.on(guide.from());
    Point to = view.on(guide.to());
    String kind = words.say(key(guide.kind()));
    if (guide.length() > 0) {
      Point way = to.minus(from).unit();
      Path line = Path.straight(from.minus(way.times(20)), to.plus(way.times(BEYOND)));
      marks.add(TapeMarks.string(line, 2));
    }
    boolean hasFigure =
        switch (guide.kind()) {
          case IN_LINE, ON_SIDE, HALF_WAY, EVEN -> guide.length() > 0;
          case SQUARE, PARALLEL, STRAIGHT_ON, LEVEL, CORNER, FIRST_CORNER, AT_JOINT -> false;
        };
    Length length = Length.inches(guide.length());
    String text =
        !hasFigure
            ? kind
            : guide
                .beyond()
                .map(b -> Length.inches(b.distance(guide.to())))
                .map(rest -> words.say("window.guide.within", kind, length, rest))
                .orElseGet(() -> words.say("window.guide.with", kind, length));
    Point at =
        switch (guide.kind()) {
          case IN_LINE -> from.towards(to, 0.5).plus(new Point(10, -8));
          case HALF_WAY, ON_SIDE, EVEN -> to.plus(new Point(16, 30));
          case SQUARE, PARALLEL, STRAIGHT_ON, LEVEL, AT_JOINT -> to.plus(new Point(16, -14));
          // Clear of the corner's letter, on whichever side that stands.
          case CORNER, FIRST_CORNER -> to.plus(new Point(30, -30));
        };
    double half = Typeface.of(Weight.MEDIUM).width(text, LABEL) / 2;
    Point middle = at.plus(new Point(half, LABEL * Typeface.CAPITAL / -2));
    Point seen = InSight.pushed(middle, half + 4, LABEL, viewport.written());
    marks.addAll(SideTape.strip(seen, text, LABEL, Weight.MEDIUM, Role.STRING));
    return marks;
  }

  private static String key(Guide.Kind kind) {
    return switch (kind) {
      case SQUARE -> "window.guide.square";
      case PARALLEL -> "window.guide.parallel";
      case STRAIGHT_ON -> "window.guide.straightOn";
      case LEVEL -> "window.guide.level";
      case IN_LINE -> "window.guide.inLine";
      case HALF_WAY -> "window.guide.halfWay";
      case EVEN -> "window.guide.even";
      case AT_JOINT -> "window.guide.atJoint";
      case CORNER -> "window.guide.corner";
      case ON_SIDE -> "window.guide.onSide";
      case FIRST_CORNER -> "window.guide.firstCorner";
    };
  }
}
