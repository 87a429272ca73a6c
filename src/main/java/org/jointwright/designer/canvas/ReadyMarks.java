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
import org.jointwright.shape.Box;
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

  /** How many times its own size a figure goes aside to find room. */
  private static final int ASIDE = 6;

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
                        SideOff.two(s, SideOff.of(held, s), held.typed()),
                        held.measured(),
                        rim.box(),
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
                        s -> tapes(s, f.shape().ring().box(), desk.viewport(), words).stream()))
        .toList();
  }

  private static List<Mark> tapes(Slab slab, Box box, Viewport viewport, Words words) {
    List<Point> middle = List.of(box.centre());
    List<SideOff> two = SideOff.two(slab, SideOff.eachWay(slab, middle), List.of());
    return tapes(two, middle, box, viewport, words);
  }

  /**
   * Strings from two sides with their figures, which keep clear of each other and of the thing.
   *
   * @param of the points of the thing of which the nearest is measured
   * @param box the room that the thing takes
   */
  private static List<Mark> tapes(
      List<SideOff> two, List<Point> of, Box box, Viewport viewport, Words words) {
    View view = viewport.view();
    List<Mark> strings = new ArrayList<>();
    List<Mark> figures = new ArrayList<>();
    List<Box> taken = new ArrayList<>();
    taken.add(
        Box.of(
                view.on(new Point(box.minX(), box.minY())),
                view.on(new Point(box.maxX(), box.maxY())))
            .grown(3));
    for (SideOff off : two) {
      Point near =
          of.stream()
              .min(Comparator.comparingDouble(p -> p.minus(off.side().start()).dot(off.in())))
              .orElseThrow();
      Point foot = near.minus(off.in().times(off.away()));
      strings.add(TapeMarks.string(view.on(Path.straight(foot, near)), 2));
      String length = words.print(Length.inches(off.away()));
      Point at = place(view.on(foot), view.on(near), length, taken, viewport.written());
      taken.add(strip(at, length));
      figures.addAll(SideTape.strip(at, length, FIGURE, Weight.BOLD, Role.STRING));
    }
    strings.addAll(figures);
    return strings;
  }

  /**
   * On the middle of its string; where that is too short, off its end outside the slab, or beside
   * it, or farther aside.
   */
  private static Point place(Point foot, Point near, String figure, List<Box> taken, Box written) {
    double half = Typeface.of(Weight.BOLD).width(figure, FIGURE) / 2;
    Point middle = foot.towards(near, 0.5);
    Point out = foot.equals(near) ? new Point(0, 1) : foot.minus(near).unit();
    List<Point> places =
        new ArrayList<>(
            List.of(
                middle,
                SideTape.clear(foot, out, half, FIGURE),
                SideTape.clear(middle, out.left(), half, FIGURE),
                SideTape.clear(middle, out.left().times(-1), half, FIGURE)));
    for (int k = 1; k <= ASIDE; k++) {
      Point aside = out.left().times(k * FIGURE);
      places.add(SideTape.clear(foot, out, half, FIGURE).plus(aside));
      places.add(SideTape.clear(foot, out, half, FIGURE).minus(aside));
      places.add(SideTape.clear(near, out.times(-1), half, FIGURE).plus(aside));
      places.add(SideTape.clear(near, out.times(-1), half, FIGURE).minus(aside));
    }
    return places.stream()
        .map(p -> InSight.pushed(p, half + 4, FIGURE, written))
        .filter(p -> taken.stream().noneMatch(b -> b.meets(strip(p, figure))))
        .findFirst()
        .orElse(InSight.pushed(middle, half + 4, FIGURE, written));
  }

  /** The room that a figure takes about its middle. */
  private static Box strip(Point at, String figure) {
    double half = Typeface.of(Weight.BOLD).width(figure, FIGURE) / 2 + 4;
    double high = FIGURE * 0.55;
    return new Box(at.x() - half, at.y() - high, at.x() + half, at.y() + high);
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
