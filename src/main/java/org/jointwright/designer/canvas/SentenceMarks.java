package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Said;
import org.jointwright.designer.sketch.Stroke;
import org.jointwright.designer.sketch.Strokes;
import org.jointwright.designer.sketch.Typing;
import org.jointwright.designer.sketch.Understanding;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Typeface;
import org.jointwright.drawing.Weight;
import org.jointwright.drawing.Wrapped;
import org.jointwright.shape.Box;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.text.Words;

/** The sentence being typed, large, and beneath it how it was understood. */
final class SentenceMarks {
  private static final double TYPE = 44;
  private static final double UNDERSTOOD = 17;
  private static final double QUIET = 13;
  private static final double HEIGHT = 68;
  private static final double INSET = 22;
  private static final double HINT = 14;

  /** The box is no narrower. */
  private static final double NARROWEST = 180;

  /** How far behind the last sign the caret stands; between two there is no room. */
  private static final double CARET = 3;

  /** How near to the edge of the paper it may stand. */
  private static final double EDGE = 12;

  /** What stands above and below it on the paper: names, the scale bar. */
  private static final double TOP = 84;

  private static final double BOTTOM = 50;

  /** How far from a side its figure reaches. */
  private static final double FIGURES = 90;

  /** How many places are tried across the paper and down it. */
  private static final int STEPS = 6;

  private SentenceMarks() {}

  /** The sentence beside the edge that it says. */
  static List<Mark> of(Desk desk, Draft draft, Said said, Words words) {
    Placed placed = placed(desk, draft, said, words);
    return box(placed.corner(), draft.typing(), placed.below());
  }

  /** Where the box stands, and what stands below it. */
  private record Placed(Point corner, List<Below> below) {
    /** The box round what is typed. */
    Box frame(String typed) {
      double wide = Math.max(NARROWEST, large(typed));
      return new Box(corner.x(), corner.y(), corner.x() + wide, corner.y() + HEIGHT);
    }
  }

  /**
   * The place in the sentence at a place of the paper; empty where the box is not there.
   *
   * @param anywhere whether a hand that has left the box still means its nearest place
   */
  static OptionalInt placeAt(
      Desk desk, Draft draft, Said said, Words words, Point at, boolean anywhere) {
    Placed placed = placed(desk, draft, said, words);
    if (!anywhere && !placed.frame(draft.typed()).holds(at)) {
      return OptionalInt.empty();
    }
    double along = at.x() - placed.corner().x() - INSET;
    return IntStream.rangeClosed(0, draft.typed().length())
        .boxed()
        .min(Comparator.comparingDouble(i -> Math.abs(before(draft.typed(), i) - along)))
        .map(OptionalInt::of)
        .orElse(OptionalInt.empty());
  }

  /** How wide the signs before a place are. */
  private static double before(String typed, int place) {
    return Typeface.of(Weight.BOLD).width(typed.substring(0, place), TYPE);
  }

  private static double large(String typed) {
    return Typeface.of(Weight.BOLD).width(typed, TYPE) + 2 * INSET + 8;
  }

  private static Placed placed(Desk desk, Draft draft, Said said, Words words) {
    Draft begun = draft.last().isPresent() ? draft : draft.begunAt(Drafting.start(desk, draft));
    String understood = new Understanding(begun, words).of(said);
    Optional<Stroke> stroke = Strokes.of(begun, said);
    boolean isUnclear = stroke.isEmpty() && !(said instanceof Said.Silent);
    String hint = words.say(isUnclear ? "window.typing.unclear" : "window.typing.enter");
    Box edge =
        stroke
            .map(s -> desk.viewport().view().on(s.edge()).box())
            .orElseGet(
                () -> {
                  Point last = desk.viewport().toPaper(begun.last().orElseThrow());
                  return Box.of(last, last);
                });
    double room = desk.viewport().width() - 2 * EDGE - INSET;
    List<Below> below = new ArrayList<>();
    Role role = isUnclear ? Role.MUST : Role.TEXT;
    Wrapped.lines(understood, UNDERSTOOD, room)
        .forEach(l -> below.add(new Below(l, UNDERSTOOD, role)));
    Wrapped.lines(hint, QUIET, room).forEach(l -> below.add(new Below(l, QUIET, Role.QUIET_TEXT)));
    Point corner = corner(desk, begun, edge, new Point(width(draft.typed(), below), high(below)));
    return new Placed(corner, below);
  }

  /** A line of words below the box. */
  private record Below(String text, double size, Role role) {
    /** From its baseline to that of the line above it. */
    double high() {
      return size + 7;
    }
  }

  private static double high(List<Below> below) {
    return HEIGHT + 14 + below.stream().mapToDouble(Below::high).sum();
  }

  /** The box on blank paper, where nothing is typed yet. */
  static List<Mark> invitation(Desk desk, Words words) {
    double room = desk.viewport().width() - 2 * EDGE - 2 * INSET;
    List<String> first = Wrapped.lines(words.say("window.empty.first"), UNDERSTOOD, room);
    List<String> hint = Wrapped.lines(words.say("window.empty.hint"), HINT, room);
    double width = Math.max(330, Wrapped.width(first, UNDERSTOOD) + 2 * INSET);
    double x = Math.max(EDGE, (desk.viewport().width() - width) / 2);
    double y = desk.viewport().height() * 0.42;
    List<Mark> marks = new ArrayList<>(frame(x, y, width, Role.SELECTED));
    marks.add(caret(x + INSET, y));
    for (int i = 0; i < first.size(); i++) {
      double up = 16 + (first.size() - 1 - i) * (UNDERSTOOD + 6);
      marks.add(line(x + INSET, y - up, first.get(i), UNDERSTOOD, Role.TEXT));
    }
    for (int i = 0; i < hint.size(); i++) {
      double down = HEIGHT + 26 + i * (HINT + 6);
      marks.add(line(x + INSET, y + down, hint.get(i), HINT, Role.QUIET_TEXT));
    }
    return marks;
  }

  private static Mark line(double x, double y, String text, double size, Role role) {
    return Mark.Words.level(new Point(x, y), text, size, Weight.REGULAR, Anchor.START, role);
  }

  private static double width(String typed, List<Below> below) {
    double under =
        below.stream()
            .mapToDouble(b -> Typeface.of(Weight.REGULAR).width(b.text(), b.size()) + INSET)
            .max()
            .orElse(0);
    return Math.max(NARROWEST, Math.max(large(typed), under));
  }

  /** Where the box stands: beside the side if there is room, and never on it if that can be. */
  private static Point corner(Desk desk, Draft draft, Box edge, Point size) {
    double w = desk.viewport().width();
    double h = desk.viewport().height();
    Point c = edge.centre();
    double width = size.x();
    double high = size.y();
    double right = Math.max(EDGE, w - width - EDGE);
    double low = Math.max(TOP, h - high - BOTTOM);
    List<Point> wanted = new ArrayList<>();
    wanted.add(new Point(edge.maxX() + 34, c.y() - HEIGHT / 2));
    wanted.add(new Point(edge.minX() - 34 - width, c.y() - HEIGHT / 2));
    wanted.add(new Point(c.x() - width / 2, edge.maxY() + 44));
    wanted.add(new Point(c.x() - width / 2, edge.minY() - 44 - high));
    for (int i = 0; i <= STEPS; i++) {
      for (int j = 0; j <= STEPS; j++) {
        double x = EDGE + (right - EDGE) * i / STEPS;
        wanted.add(new Point(x, TOP + (low - TOP) * j / STEPS));
      }
    }
    List<Box> sides = new ArrayList<>();
    draft.edges().forEach(e -> sides.add(desk.viewport().view().on(e).box()));
    return wanted.stream()
        .filter(p -> p.x() >= EDGE && p.y() >= TOP && p.x() <= right && p.y() <= low)
        .min(Comparator.comparingDouble(p -> inTheWay(p, size, edge.grown(10), sides)))
        .orElse(new Point(EDGE, TOP));
  }

  /** How much a box would hide: the side being typed weighs most, then those that are there. */
  private static double inTheWay(Point at, Point size, Box edge, List<Box> sides) {
    Box box = new Box(at.x(), at.y(), at.x() + size.x(), at.y() + size.y());
    double hidden = box.meets(edge) ? 1e6 : 0;
    hidden += 1e4 * sides.stream().filter(s -> box.meets(s.grown(10))).count();
    hidden += 1e3 * sides.stream().filter(s -> box.meets(s.grown(FIGURES))).count();
    return hidden + box.centre().distance(edge.centre());
  }

  private static List<Mark> box(Point corner, Typing typing, List<Below> below) {
    String typed = typing.text();
    double x = corner.x();
    double y = corner.y();
    List<Mark> marks =
        new ArrayList<>(frame(x, y, Math.max(NARROWEST, large(typed)), Role.SELECTED));
    if (!typing.picked().isEmpty()) {
      marks.add(picked(x + INSET, y, typing));
    }
    marks.add(
        Mark.Words.level(
            new Point(x + INSET, y + 49), typed, TYPE, Weight.BOLD, Anchor.START, Role.SELECTED));
    double behind = typing.caret() == typed.length() ? CARET : 0;
    marks.add(caret(x + INSET + before(typed, typing.caret()) + behind, y));
    // A strip of paper, so that nothing beneath crosses the words.
    double strip = width("", below) - INSET;
    double high = high(below) - HEIGHT - 6;
    marks.add(
        Mark.Area.of(Rings.rounded(x + INSET - 4, y + HEIGHT + 6, strip + 8, high, 3), Role.PAPER));
    double base = y + HEIGHT + 2;
    for (Below line : below) {
      base += line.high();
      marks.add(line(x + INSET, base, line.text(), line.size(), line.role()));
    }
    return marks;
  }

  private static List<Mark> frame(double x, double y, double width, Role role) {
    Ring box = Rings.rounded(x, y, width, HEIGHT, 5);
    return List.of(Mark.Area.of(box, Role.ON_MUST), Mark.Line.of(new Path(box.edges()), 2.4, role));
  }

  private static Mark picked(double x, double y, Typing typing) {
    double from = before(typing.text(), typing.from());
    double wide = before(typing.text(), typing.to()) - from;
    return Mark.Area.of(Rings.box(x + from, y + 12, wide, HEIGHT - 24), Role.SELECTED_HALO);
  }

  private static Mark caret(double x, double y) {
    return Mark.Line.of(new Point(x, y + 14), new Point(x, y + HEIGHT - 14), 2, Role.SELECTED);
  }

  /** Whether the sentence is to be seen. */
  static boolean isShown(Draft draft) {
    return !draft.typed().isEmpty();
  }

  /** What a screen reader says of the sentence. */
  static Optional<String> spoken(Desk desk, Said said, Words words) {
    return desk.draft()
        .filter(SentenceMarks::isShown)
        .map(
            d -> {
              Draft begun = d.last().isPresent() ? d : d.begunAt(Drafting.start(desk, d));
              return d.typed() + ". " + new Understanding(begun, words).of(said);
            });
  }
}
