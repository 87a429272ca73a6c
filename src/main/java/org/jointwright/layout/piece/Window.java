package org.jointwright.layout.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * One piece of a large draft by itself, with as much of the joints round it as tells where joints
 * end on it: what is cut in it there is cut in the whole draft afterwards.
 */
public final class Window {
  /** What ends this near to the piece ends on it, inches. */
  private static final double ON = 1;

  /** How much of a joint beyond the piece is seen, inches. */
  private static final double BEYOND = 12;

  /** How far before its end a joint of the window is told to stop, inches. */
  private static final double SHORT = 12;

  private final Draft part;

  private Window(Draft part) {
    this.part = part;
  }

  /** Piece {@code number} of a draft. */
  public static Window of(Draft whole, int number) {
    Piece piece = whole.pieces().get(number);
    Map<Integer, Integer> known = new LinkedHashMap<>();
    for (int l = 0; l < piece.loopCount(); l++) {
      for (int tag : piece.loop(l).tags()) {
        if (tag >= 0) {
          known.putIfAbsent(tag, known.size());
        }
      }
    }
    for (int i = 0; i < whole.lines().size(); i++) {
      if (endsOn(whole.lines().get(i), piece)) {
        known.putIfAbsent(i, known.size());
      }
    }
    List<Laid> lines = new ArrayList<>();
    for (int k : known.keySet()) {
      Laid l = whole.lines().get(k);
      lines.add(
          new Laid(
              l.move(),
              shortened(l.path(), piece),
              tag(known, l.startTag()),
              tag(known, l.endTag()),
              l.kind(),
              /* locked= */ true,
              l.follows()));
    }
    List<Loop> holes = piece.holes().stream().map(h -> retagged(known, h)).toList();
    Piece own = piece.with(retagged(known, piece.outer()), holes);
    return new Window(Draft.of(whole.ground(), List.of(own), lines));
  }

  private static boolean endsOn(Laid line, Piece piece) {
    for (boolean last : new boolean[] {false, true}) {
      Point end = line.end(last);
      if (line.tag(last) >= 0
          && piece.box().grown(ON).holds(end)
          && piece.outer().distance(end) < ON) {
        return true;
      }
    }
    return false;
  }

  private static int tag(Map<Integer, Integer> known, int tag) {
    return tag < 0 ? tag : known.getOrDefault(tag, -1);
  }

  private static Loop retagged(Map<Integer, Integer> known, Loop loop) {
    return new Loop(loop.edges(), loop.tags().stream().map(t -> tag(known, t)).toList());
  }

  /** As much of a straight joint as lies beside the piece. */
  private static Edge shortened(Edge path, Piece piece) {
    if (!(path instanceof Segment s)) {
      return path;
    }
    Point u = s.direction(0);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Edge e : piece.outer().edges()) {
      double at = e.start().minus(s.start()).dot(u);
      low = Math.min(low, at);
      high = Math.max(high, at);
    }
    double from = Math.clamp(low - BEYOND, 0, s.length());
    double to = Math.clamp(high + BEYOND, 0, s.length());
    return to - from < ON ? s : new Segment(s.at(from / s.length()), s.at(to / s.length()));
  }

  /** The piece as a draft, the joints round it held. */
  public Draft part() {
    return part;
  }

  /**
   * The whole draft with what was cut in the window.
   *
   * @param cut a draft that came of {@link #part}
   */
  public Draft into(Draft whole, Draft cut) {
    Draft d = whole;
    for (Laid l : cut.lines().subList(part.lines().size(), cut.lines().size())) {
      if (!l.follows()) {
        d = d.cut(kept(l)).orElse(d);
      }
    }
    return d;
  }

  /** The cut that made a line, to end in the whole draft where it ends here. */
  private static Move kept(Laid line) {
    if (line.move().reach() == Move.Reach.PIECE) {
      return line.move();
    }
    double length = line.path().length();
    double share = Math.min(0.25, SHORT / length);
    return line.move().upTo(line.path().at(share), line.path().at(1 - share));
  }
}
