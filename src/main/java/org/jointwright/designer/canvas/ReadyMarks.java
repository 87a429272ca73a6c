package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.Viewport;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.plan.Outline;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.text.Words;

/** A ready shape in the hand: its picture, its figures, what drew its first corner. */
final class ReadyMarks {
  private static final double FIGURE = 18;

  /** A side shorter than this on the paper has no room for its figure; pixels. */
  private static final double ROOM = 26;

  private ReadyMarks() {}

  static List<Mark> of(Hold.HeldShape held, Viewport viewport, Words words) {
    View view = viewport.view();
    List<Mark> marks = new ArrayList<>();
    held.shape()
        .at(held.pencil().at())
        .map(Outline::ring)
        .ifPresent(
            r -> {
              Ring on = view.on(r);
              marks.add(Mark.Area.of(on, Role.PANEL));
              marks.add(Mark.Line.of(new Path(on.edges()), 3, Role.SELECTED));
              for (Edge e : r.edges()) {
                if (view.on(e).length() >= ROOM) {
                  marks.addAll(SideTape.beside(e, viewport, words, FIGURE));
                }
              }
            });
    held.pencil().guides().forEach(g -> marks.addAll(GuideMarks.of(g, viewport, words)));
    Point at = view.on(held.pencil().at());
    marks.add(Mark.Area.of(Rings.circle(at, 7), Role.PAPER));
    marks.add(Mark.Line.of(new Path(Rings.circle(at, 7).edges()), 2.5, Role.SELECTED));
    return marks;
  }
}
