package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jointwright.designer.shaping.SideOff;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.Viewport;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.TapeMarks;
import org.jointwright.drawing.Typeface;
import org.jointwright.drawing.View;
import org.jointwright.drawing.Weight;
import org.jointwright.measure.Length;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.text.Words;

/** What waits to be set down: its picture, its figures, what drew its first corner. */
final class ReadyMarks {
  private static final double FIGURE = 18;

  /** A side shorter than this on the paper has no room for its figure; pixels. */
  private static final double ROOM = 26;

  private ReadyMarks() {}

  /** A fixed object or opening in the hand, and how far it is from two sides. */
  static List<Mark> of(Desk desk, Hold.HeldAddition held, Words words) {
    View view = desk.viewport().view();
    Ring rim = held.what().ring(held.at());
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.Area.of(view.on(rim), held.what().kind().isPresent() ? Role.FIXED : Role.PAPER));
    desk.plan()
        .slab(held.slab())
        .filter(s -> s.region().contains(held.at()))
        .ifPresent(
            s ->
                marks.addAll(
                    tapes(
                        s,
                        held.what().kind().isPresent()
                            ? List.of(held.at())
                            : rim.edges().stream().map(Edge::start).toList(),
                        desk.viewport(),
                        words)));
    marks.add(Mark.Line.of(new Path(view.on(rim).edges()), 2.5, Role.SELECTED));
    return marks;
  }

  /** How far a fixed object that is dragged stands from two sides. */
  static List<Mark> tapes(Desk desk, String fixed, Words words) {
    return desk.plan().fixedObject(fixed).stream()
        .flatMap(
            f ->
                desk.plan().slab(f.slab()).stream()
                    .flatMap(
                        s ->
                            tapes(
                                s, List.of(f.shape().ring().box().centre()), desk.viewport(), words)
                                .stream()))
        .toList();
  }

  private static List<Mark> tapes(Slab slab, List<Point> of, Viewport viewport, Words words) {
    View view = viewport.view();
    List<Mark> strings = new ArrayList<>();
    List<Mark> figures = new ArrayList<>();
    for (SideOff off : SideOff.nearestTwo(slab, of)) {
      Point near =
          of.stream()
              .min(Comparator.comparingDouble(p -> p.minus(off.side().start()).dot(off.in())))
              .orElseThrow();
      Point foot = near.minus(off.in().times(off.away()));
      strings.add(TapeMarks.string(view.on(Path.straight(foot, near)), 2));
      String length = words.print(Length.inches(off.away()));
      double half = Typeface.of(Weight.BOLD).width(length, FIGURE) / 2;
      Point at =
          InSight.pushed(view.on(foot.towards(near, 0.5)), half + 4, FIGURE, viewport.written());
      figures.addAll(SideTape.strip(at, length, FIGURE, Weight.BOLD, Role.STRING));
    }
    strings.addAll(figures);
    return strings;
  }

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
