package org.jointwright.layout.piece;

import java.util.List;
import java.util.Optional;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.jspecify.annotations.Nullable;

/**
 * The stretch of a carrier that runs clean across a piece.
 *
 * @param runs from start to end; two where it bends on its way
 * @param start where it starts
 * @param end where it ends
 */
public record Chord(List<Edge> runs, Hit start, Hit end) {
  /** Copies the list. */
  public Chord {
    runs = List.copyOf(runs);
  }

  /** The only run of one that does not bend; the first of one that does. */
  public Edge path() {
    return runs.getFirst();
  }

  /** Its length, inches. */
  public double length() {
    return runs.stream().mapToDouble(Edge::length).sum();
  }

  /** An end nearer to a vertex than this, but not at it, would be taken for one at it, inches. */
  private static final double BESIDE = 0.6;

  private static final double FLAT = 12;

  /**
   * A place on a piece's boundary.
   *
   * @param loop 0 for the outer loop, {@code k + 1} for hole {@code k}
   * @param edge the edge of the loop
   * @param share where on the edge; 0 at its start, never 1
   * @param point the place
   * @param tag what the edge runs along; a hard one's where a vertex joins hard and joint
   */
  public record Hit(int loop, int edge, double share, Point point, int tag) {
    /** Whether it stands at the start of its edge. */
    public boolean atVertex() {
      return share == 0;
    }
  }

  /** A seed this near to the boundary stands on it, inches. */
  private static final double ON = 0.05;

  /**
   * The chord of {@code carrier} across {@code piece} that holds {@code seed}; empty when the seed
   * stands on the boundary.
   */
  public static Optional<Chord> across(Piece piece, Carrier carrier, Point seed) {
    double here = carrier.place(seed);
    boolean round = carrier instanceof Carrier.Circle;
    double ahead = Double.POSITIVE_INFINITY;
    double behind = Double.POSITIVE_INFINITY;
    Hit end = null;
    Hit start = null;
    for (int l = 0; l < piece.loopCount(); l++) {
      Loop loop = piece.loop(l);
      for (int i = 0; i < loop.size(); i++) {
        for (Carrier.Crossing c : carrier.crossings(loop.edges().get(i))) {
          double forward = c.place() - here;
          double backward = -forward;
          if (Math.abs(forward) < ON * carrier.perInch()) {
            return Optional.empty();
          }
          if (round) {
            forward = forward <= 0 ? forward + 2 * Math.PI : forward;
            backward = 2 * Math.PI - forward;
          }
          if (forward > 0 && forward < ahead - 1e-9) {
            Hit hit = facing(loop, l, i, c, carrier.direction(c.place()).times(-1));
            if (hit != null) {
              ahead = forward;
              end = hit;
            }
          }
          if (backward > 0 && backward < behind - 1e-9) {
            Hit hit = facing(loop, l, i, c, carrier.direction(c.place()));
            if (hit != null) {
              behind = backward;
              start = hit;
            }
          }
        }
      }
    }
    if (start == null || end == null || start.point().distance(end.point()) < 1) {
      return Optional.empty();
    }
    Hit from = settled(piece, start);
    Hit to = settled(piece, end);
    if (from == null || to == null) {
      return Optional.empty();
    }
    return Optional.of(new Chord(runs(carrier, from.point(), to.point()), from, to));
  }

  private static List<Edge> runs(Carrier carrier, Point from, Point to) {
    boolean bends = carrier instanceof Bent && carrier.place(from) < 0 && carrier.place(to) > 0;
    return bends && carrier instanceof Bent b
        ? List.of(new Segment(from, b.bend()), new Segment(b.bend(), to))
        : List.of(carrier.edge(from, to));
  }

  /**
   * An end that does not stand a hair beside a vertex: it is brought to a vertex where the edge
   * hardly turns, and refused beside a corner.
   */
  private static @Nullable Hit settled(Piece piece, Hit hit) {
    if (hit.atVertex()) {
      return hit;
    }
    Loop loop = piece.loop(hit.loop());
    double length = loop.edge(hit.edge()).length();
    boolean first = hit.share() * length < BESIDE;
    if (!first && (1 - hit.share()) * length >= BESIDE) {
      return hit;
    }
    int vertex = first ? hit.edge() : (hit.edge() + 1) % loop.size();
    boolean flat = Math.abs(loop.angle(vertex) - 180) < FLAT;
    if (!flat || !loop.isHard(vertex) || !loop.isHard(vertex - 1)) {
      return null;
    }
    return new Hit(hit.loop(), vertex, 0, loop.edge(vertex).start(), loop.tag(vertex));
  }

  private static @Nullable Hit facing(
      Loop loop, int number, int edge, Carrier.Crossing c, Point inward) {
    if (c.share() > 0 && c.share() < 1) {
      Edge e = loop.edges().get(edge);
      boolean left = e.direction(c.share()).cross(inward) > 0;
      return left ? new Hit(number, edge, c.share(), e.at(c.share()), loop.tag(edge)) : null;
    }
    int vertex = c.share() == 0 ? edge : (edge + 1) % loop.size();
    if (!loop.opensTo(vertex, inward)) {
      return null;
    }
    int tag = Math.min(loop.tag(vertex), loop.tag(vertex - 1));
    return new Hit(number, vertex, 0, loop.edge(vertex).start(), tag);
  }
}
