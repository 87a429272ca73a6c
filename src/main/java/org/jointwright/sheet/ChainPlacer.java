package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.TapeMarks;
import org.jointwright.drawing.View;
import org.jointwright.plan.Tape;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.sheet.block.Type;
import org.jointwright.sheet.place.Ground;
import org.jointwright.sheet.place.Quad;

/**
 * Places the chains: beside the side, its figures outside; a figure that would touch another goes
 * up a level with a leader; then smaller; then the side goes into the column.
 */
final class ChainPlacer {
  private static final double OFF = 5;

  /** How far beside a side it is looked for another slab, inches. */
  private static final double BESIDE = 6;

  private static final double GAP = 1.5;
  private static final double LEVEL = 7.4;
  private static final double PAST = 0.8;

  /** How far short of its figure a leader stops. */
  private static final double SHORT = 0.8;

  private static final double HOOK = 4;
  private static final double HOOK_WIDTH = 1;
  private static final double ARROW = 3;
  private static final double THIN = 0.35;

  /** A place for a figure: how many levels up, and how far along its side, in its widths. */
  private record Spot(int up, double shift) {}

  /** The places in the order they are tried; half a width clears the mark whole. */
  private static final List<Spot> SPOTS =
      List.of(
          new Spot(0, 0),
          new Spot(1, 0),
          new Spot(0, -0.25),
          new Spot(0, 0.25),
          new Spot(0, -0.42),
          new Spot(0, 0.42),
          new Spot(0, -0.5),
          new Spot(0, 0.5),
          new Spot(1, -0.25),
          new Spot(1, 0.25),
          new Spot(1, -0.42),
          new Spot(1, 0.42),
          new Spot(1, -0.5),
          new Spot(1, 0.5));

  private static final double CLEAR_OF_MARK = 1.3;

  private final Facts facts;
  private final View view;
  private final Ground ground;
  private final ToDoubleFunction<Chains.Chain> least;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Chains.Chain> unplaced = new ArrayList<>();

  /**
   * On a field of the page.
   *
   * @param least what gets no place where its side is shorter, millimetres on the page
   */
  ChainPlacer(Facts facts, View view, Ground ground, ToDoubleFunction<Chains.Chain> least) {
    this.least = least;
    this.facts = facts;
    this.view = view;
    this.ground = ground;
  }

  /** The chains that found no place. */
  List<Chains.Chain> unplaced() {
    return unplaced;
  }

  /** Places all chains, the long ones first. */
  List<Mark> place() {
    facts.chains().stream()
        .sorted((a, b) -> Double.compare(b.total(), a.total()))
        .forEach(this::place);
    return marks;
  }

  private void place(Chains.Chain chain) {
    if (chain.total() * view.scale() < least.applyAsDouble(chain)) {
      unplaced.add(chain);
      return;
    }
    // Where another slab lies outside, the chain would run through it and seem to be its own.
    boolean isBeside = isBesideAnother(chain.tape());
    boolean leftIsFull = chain.tape().along() != isBeside;
    boolean[] ways = isBeside ? new boolean[] {true} : new boolean[] {true, false};
    for (Type type : List.of(Type.MARK, Type.MARK_TIGHT)) {
      for (boolean outside : ways) {
        for (boolean level : new boolean[] {true, false}) {
          Try attempt = new Try(chain, type, outside == leftIsFull ? -1 : 1, level);
          if (attempt.succeeds()) {
            marks.add(new Mark.Group("side-" + chain.tape().name(), "", attempt.drawn));
            return;
          }
        }
      }
    }
    unplaced.add(chain);
  }

  /** Whether another slab than the one it belongs to lies along a part of a side. */
  private boolean isBesideAnother(Tape tape) {
    Edge edge = tape.path().edges().getFirst();
    for (double t : new double[] {0.15, 0.5, 0.85}) {
      Point out = edge.direction(t).left().times(tape.along() ? -BESIDE : BESIDE);
      Point p = edge.at(t).plus(out);
      if (tape.isStraight()
          && facts.plan().slabs().stream()
              .anyMatch(s -> !s.id().equals(tape.slab()) && s.region().contains(p))) {
        return true;
      }
    }
    return false;
  }

  /** One way of placing a chain. */
  private final class Try {
    private final Chains.Chain chain;
    private final Type type;
    private final int side;
    private final boolean level;
    private final List<Mark> drawn = new ArrayList<>();
    private final Path path;

    /**
     * @param side 1 for the left of the tape as seen in the plan, -1 for the right
     * @param level whether figures stand level though the side is steep
     */
    Try(Chains.Chain chain, Type type, int side, boolean level) {
      this.chain = chain;
      this.type = type;
      this.side = side;
      this.level = level;
      this.path = view.on(chain.tape().path());
    }

    /** Unit vector off the side, on the page; y runs down, so the plan's left is turned over. */
    private Point off(Point heading) {
      return heading.left().times(-side);
    }

    private Edge edgeAt(double along) {
      return path.edges().get(indexAt(along));
    }

    private int indexAt(double along) {
      double left = along * view.scale();
      int i = 0;
      while (i < path.edges().size() - 1 && left > path.edges().get(i).length() + 1e-6) {
        left -= path.edges().get(i).length();
        i++;
      }
      return i;
    }

    private double shareAt(double along) {
      double left = along * view.scale();
      for (int i = 0; i < indexAt(along); i++) {
        left -= path.edges().get(i).length();
      }
      return Math.clamp(left / edgeAt(along).length(), 0, 1);
    }

    boolean succeeds() {
      Ground.Moment before = ground.now();
      Point chord = path.end().minus(path.start());
      boolean steep = Math.abs(chord.y()) > Math.abs(chord.x());
      if (level && (!steep || !straight())) {
        return false;
      }
      line();
      List<Chains.Stop> stops = chain.stops();
      boolean all = true;
      for (int i = 0; i < stops.size() && all; i++) {
        boolean only = stops.size() == 1;
        all = figure(stops.get(i), only);
      }
      if (!all || !drawn.stream().allMatch(this::clear)) {
        ground.back(before);
        return false;
      }
      return true;
    }

    private boolean straight() {
      return chain.tape().isStraight();
    }

    /** Dimension lines may cross lines of the plan, but no text. */
    private boolean clear(Mark mark) {
      return !(mark instanceof Mark.Line l)
          || l.path().edges().stream()
              .allMatch(e -> free(Quad.line(e.start(), e.end(), l.width() / 2), mark));
    }

    private boolean free(Quad quad, Mark mark) {
      return !own.contains(mark) || ground.isFreeOfTexts(quad);
    }

    private final List<Mark> own = new ArrayList<>();

    private void line() {
      List<Edge> moved = new ArrayList<>();
      for (Edge e : path.edges()) {
        int parts = e.turn() == 0 ? 1 : 24;
        for (int i = 0; i < parts; i++) {
          Point a = beside(e, (double) i / parts, OFF);
          Point b = beside(e, (i + 1.0) / parts, OFF);
          moved.add(new org.jointwright.shape.Segment(a, b));
        }
      }
      List<Point> points = new ArrayList<>(List.of(moved.getFirst().start()));
      moved.forEach(e -> points.add(e.end()));
      Path dimension = Path.through(points);
      draw(Mark.Line.of(dimension, THIN, Role.DIMENSION));
      Edge first = path.edges().getFirst();
      Mark.Line hook =
          TapeMarks.hook(dimension.start(), first.direction(0), HOOK, HOOK_WIDTH, Role.DIMENSION);
      draw(hook);
      ground.addLine(hook.path(), HOOK_WIDTH);
      extension(first, 0, OFF + PAST);
      ground.addLine(dimension, THIN);
    }

    private Point beside(Edge e, double t, double distance) {
      return e.at(t).plus(off(e.direction(t)).times(distance));
    }

    private void draw(Mark.Line line) {
      drawn.add(line);
      own.add(line);
    }

    private void extension(Edge e, double t, double to) {
      Path line = Path.straight(beside(e, t, 0.9), beside(e, t, to));
      draw(Mark.Line.of(line, THIN, Role.DIMENSION));
      ground.addLine(line, THIN);
    }

    /** The arrow at a mark, and its figure where there is room. */
    private boolean figure(Chains.Stop stop, boolean only) {
      Edge e = edgeAt(stop.along());
      double t = shareAt(stop.along());
      Point heading = e.direction(t);
      Point tip = beside(e, t, OFF);
      drawn.add(TapeMarks.arrow(tip, heading, ARROW, Role.DIMENSION));
      extension(e, t, OFF + PAST);
      double at = only ? stop.along() / 2 : stop.along();
      Edge textEdge = edgeAt(at);
      double textShare = shareAt(at);
      String text = facts.print(stop.along());
      for (Spot spot : SPOTS) {
        if (level && spot.shift() != 0) {
          continue;
        }
        Mark.Words words = words(textEdge, textShare, text, spot.up() * LEVEL, spot.shift());
        if (ground.isFree(words) && leaderIsFree(textEdge, textShare, spot.up())) {
          leader(textEdge, textShare, spot.up(), words);
          return true;
        }
      }
      return false;
    }

    private Path leaderLine(Edge e, double t, int up) {
      return Path.straight(beside(e, t, OFF + PAST), beside(e, t, OFF + GAP + up * LEVEL - SHORT));
    }

    private boolean leaderIsFree(Edge e, double t, int up) {
      Path line = leaderLine(e, t, up);
      return up == 0 || ground.isFreeOfTexts(Quad.line(line.start(), line.end(), THIN / 2));
    }

    private void leader(Edge e, double t, int up, Mark.Words words) {
      if (up > 0) {
        Path line = leaderLine(e, t, up);
        draw(Mark.Line.of(line, THIN, Role.DIMENSION));
        ground.addLine(line, THIN);
      }
      drawn.add(words);
      ground.add(words);
    }

    private double moved(double shift, String text) {
      double clear = Math.abs(shift) == 0.5 ? Math.copySign(CLEAR_OF_MARK, shift) : 0;
      return shift * type.width(text) + clear;
    }

    private Mark.Words words(Edge e, double t, String text, double up, double shift) {
      double from = OFF + GAP + up;
      if (level) {
        Point off = off(e.direction(t));
        boolean right = off.x() > 0;
        Point at = e.at(t).plus(off.times(from)).plus(new Point(0, type.capital / 2));
        return type.turned(at, text, right ? Anchor.START : Anchor.END, 0);
      }
      double moved = moved(shift, text);
      // Beside its mark it keeps to the bend: straight on it would stand off its line.
      double bent = e instanceof Arc arc ? bent(arc, t, from, moved) : t;
      boolean bends = bent != t && bent >= 0 && bent <= 1;
      Point foot = bends ? e.at(bent) : e.at(t);
      Point heading = bends ? e.direction(bent) : e.direction(t);
      Point off = off(heading);
      Point along = heading.times(readable(heading));
      Point upwards = new Point(along.y(), -along.x());
      boolean above = off.dot(upwards) > 0;
      double distance = above ? from : from + type.capital;
      Point at = foot.plus(off.times(distance)).plus(along.times(bends ? 0 : moved));
      double angle = Math.toDegrees(Math.atan2(-along.y(), along.x()));
      return type.turned(at, text, Anchor.MIDDLE, angle);
    }

    /** Where on an arc text stands that is so far off it and moved so far along. */
    private double bent(Arc arc, double t, double from, double moved) {
      Point heading = arc.direction(t);
      boolean out = off(heading).dot(arc.at(t).minus(arc.centre())) > 0;
      double radius = arc.radius() + (out ? from : -from);
      return radius < from ? t : t + moved * readable(heading) / (radius * Math.abs(arc.sweep()));
    }

    /** 1 where text that runs the way the side does can be read, else -1. */
    private static int readable(Point heading) {
      boolean back = heading.x() < -1e-9 || (Math.abs(heading.x()) <= 1e-9 && heading.y() > 0);
      return back ? -1 : 1;
    }
  }
}
