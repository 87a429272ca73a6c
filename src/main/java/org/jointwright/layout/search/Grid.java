package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Chord;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * Rows and columns right across a slab.
 *
 * @param slab what they cross
 * @param along the direction of the rows
 * @param rows across which the rows stand
 * @param low where the rows stand, in order
 * @param columns across which the columns stand
 * @param left where the columns stand, in order
 */
record Grid(Piece slab, Point along, Rows rows, List<Double> low, Rows columns, List<Double> left) {
  /** What is nearer is there, inches. */
  private static final double ON = 0.5;

  /** How far before the joint at which it ends a line is told to end, inches. */
  private static final double SHORT = 24;

  /** Beyond any slab, inches. */
  private static final double FAR = 1e7;

  /** So often lines are tried anew that end on one another. */
  private static final int PASSES = 4;

  /** Copies the lists. */
  Grid {
    low = List.copyOf(low);
    left = List.copyOf(left);
  }

  /** The bay that the whole slab is. */
  Bay whole() {
    return Bay.round(slab.outer().edges(), along);
  }

  /** The bay between lines at least {@code gap} away from those edges, or along their sides. */
  Bay round(List<Edge> edges, double gap) {
    return Bay.round(edges, along).reaching(low, left, gap, whole());
  }

  /** The longest side that panels between the lines have about, inches. */
  double longest() {
    return Math.max(rows.span() / (low.size() + 1), columns.span() / (left.size() + 1));
  }

  /** Whether a line passes a place. */
  boolean meets(Point p) {
    double row = p.dot(along.left());
    double column = -p.dot(along);
    return low.stream().anyMatch(v -> Math.abs(v - row) < ON)
        || left.stream().anyMatch(v -> Math.abs(v - column) < ON);
  }

  /** All lines, from edge to edge. */
  List<Move> moves() {
    List<Move> moves = new ArrayList<>(rows.moves(low, Move.Reach.THROUGH));
    moves.addAll(columns.moves(left, Move.Reach.THROUGH));
    return moves;
  }

  /**
   * A stretch of a line between bays.
   *
   * @param from where it must start, on a joint round a bay or at an edge
   * @param to where it must end
   */
  private record Stretch(Move move, Point from, Point to) {
    boolean isMadeBy(Laid line) {
      return line.end(false).distance(from) < ON && line.end(true).distance(to) < ON;
    }
  }

  /** A part of a line, as places on it. */
  private record Part(double from, double to) {}

  /**
   * The slab cut by lines that end at bays.
   *
   * @param start the slab, not cut
   * @param each what is done before each cut: it may end the search
   */
  Draft between(List<Bay> bays, Draft start, Runnable each) {
    List<Move> whole = new ArrayList<>();
    List<Stretch> parts = new ArrayList<>();
    for (double v : low) {
      List<Part> out =
          bays.stream()
              .filter(b -> b.takesRow(v))
              .map(b -> new Part(-b.right(), -b.left()))
              .toList();
      rows.moves(List.of(v), Move.Reach.THROUGH).forEach(m -> divide(m, out, whole, parts));
    }
    for (double v : left) {
      List<Part> out =
          bays.stream()
              .filter(b -> b.takesColumn(v))
              .map(b -> new Part(b.low(), b.high()))
              .toList();
      columns.moves(List.of(v), Move.Reach.THROUGH).forEach(m -> divide(m, out, whole, parts));
    }
    Draft d = start;
    for (Move m : whole) {
      each.run();
      d = d.cut(m).orElse(d);
    }
    // What ends on a stretch of another line can be cut once that is there.
    List<Stretch> open = parts;
    for (int pass = 0; pass < PASSES && !open.isEmpty(); pass++) {
      List<Stretch> later = new ArrayList<>();
      for (Stretch s : open) {
        each.run();
        Optional<Draft> cut = d.cut(s.move()).filter(c -> s.isMadeBy(c.lines().getLast()));
        if (cut.isEmpty()) {
          later.add(s);
        }
        d = cut.orElse(d);
      }
      open = later;
    }
    return d;
  }

  /** What is left of a line where parts are taken out of it. */
  private void divide(Move line, List<Part> out, List<Move> whole, List<Stretch> open) {
    Optional<Chord> chord = Chord.across(slab, line.carrier(), line.seed());
    if (chord.isEmpty()) {
      return;
    }
    Carrier carrier = line.carrier();
    double from = carrier.place(chord.get().start().point());
    double to = carrier.place(chord.get().end().point());
    if (out.stream().noneMatch(o -> o.from() < to - ON && o.to() > from + ON)) {
      whole.add(line);
      return;
    }
    List<Part> parts = new ArrayList<>(out);
    parts.add(new Part(to, FAR));
    parts.sort(Comparator.comparingDouble(Part::from));
    double at = from;
    for (Part o : parts) {
      double end = Math.min(o.from(), to);
      if (end - at > ON) {
        double before = Math.min(SHORT, (end - at) / 3);
        Point one = carrier.at(at == from ? -FAR : at + before);
        Point other = carrier.at(end == to ? FAR : end - before);
        Move part =
            new Move(carrier, carrier.at((at + end) / 2), Move.Reach.THROUGH).upTo(one, other);
        open.add(new Stretch(part, carrier.at(at), carrier.at(end)));
      }
      at = Math.max(at, o.to());
    }
  }
}
