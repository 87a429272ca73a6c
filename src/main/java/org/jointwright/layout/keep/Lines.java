package org.jointwright.layout.keep;

import java.util.List;
import java.util.Optional;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.shape.Point;
import org.jspecify.annotations.Nullable;

/** Lays one straight strand by what is known of its ends. */
final class Lines {
  /** Shorter than this a joint is none, inches. */
  private static final double SHORTEST = 1;

  private final List<Stretch> stretches;
  private final Anchors anchors;
  private final Marks marks;
  private final Turns turns;

  Lines(List<Stretch> stretches, Anchors anchors, Marks marks) {
    this.stretches = stretches;
    this.anchors = anchors;
    this.marks = marks;
    this.turns = new Turns(stretches);
  }

  /** The line it runs along now; null where it has none. */
  @Nullable Carrier lay(Strand strand) {
    Point p = anchors.place(strand.start());
    Point q = anchors.place(strand.end());
    if (p == null || q == null || p.distance(q) < SHORTEST) {
      return null;
    }
    if (isStill(strand.start(), p) && isStill(strand.end(), q)) {
      return strand.before();
    }
    boolean first = strand.start().now() != null;
    boolean last = strand.end().now() != null;
    if (first && last) {
      return Carrier.Line.through(p, q);
    }
    Point u = strand.direction();
    Point chord = q.minus(p).unit();
    double turn = Math.atan2(u.cross(chord), u.dot(chord));
    Optional<Turns.Range> range = turns.of(strand, first || last);
    double kept = range.map(r -> r.clamp(turn)).orElse(turn);
    Point pivot = first ? p : last ? q : p.towards(q, 0.5);
    Carrier.Line line = new Carrier.Line(pivot, Math.abs(kept) < 1e-9 ? u : u.turned(kept));
    boolean square = range.isPresent() && range.get().isAtEnd(kept);
    if (square) {
      return first || last ? line : shifted(strand, line, p, q);
    }
    return Carrier.Line.through(
        first ? p : marked(strand.start(), line, p), last ? q : marked(strand.end(), line, q));
  }

  private static boolean isStill(Node node, Point place) {
    return node.before().distance(place) < Strand.HAIR;
  }

  /** A square line brought to whole inches at one end, so that it stays square. */
  private Carrier shifted(Strand strand, Carrier.Line line, Point p, Point q) {
    for (boolean last : new boolean[] {false, true}) {
      Node end = strand.end(last);
      if (isMarked(end)) {
        return new Carrier.Line(marked(end, line, last ? q : p), line.unit());
      }
    }
    return line;
  }

  private boolean isMarked(Node node) {
    return node.isOnRim() && marks.wasMarked(node, stretches.get(node.stretch()));
  }

  /** Where a line ends, brought to a whole inch if it stood at one. */
  private Point marked(Node node, Carrier line, Point by) {
    if (!node.isOnRim()) {
      return by;
    }
    Stretch s = stretches.get(node.stretch());
    Point foot = s.meets(line, by);
    if (foot == null) {
      return by;
    }
    return isMarked(node) ? s.at(marks.mark(node, s, s.alongNow(foot))) : foot;
  }
}
