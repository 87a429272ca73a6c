package org.jointwright.layout.keep;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.shape.Point;
import org.jspecify.annotations.Nullable;

/** Joints that run on from one to the next along one line or circle. */
final class Strand {
  /** What moved by less did not move, inches: some grains of the engine's bench. */
  static final double HAIR = 2e-6;

  private final Carrier before;
  private final List<Node> nodes;
  private final List<Track> tracks;
  private final List<Node> tees = new ArrayList<>();
  private @Nullable Carrier now;

  /**
   * A strand.
   *
   * @param before the line or circle it ran along
   * @param nodes the places along it where its joints end, in order; the first again last where it
   *     closes
   * @param tracks its joints
   */
  Strand(Carrier before, List<Node> nodes, List<Track> tracks) {
    this.before = before;
    this.nodes = List.copyOf(nodes);
    this.tracks = List.copyOf(tracks);
    if (!isClosed()) {
      start().ending().add(this);
      end().ending().add(this);
    }
    int first = isClosed() ? 0 : 1;
    for (int i = first; i < nodes.size() - 1; i++) {
      nodes.get(i).passing().add(this);
    }
  }

  boolean isClosed() {
    return start() == end();
  }

  boolean isRound() {
    return before instanceof Carrier.Circle;
  }

  Carrier before() {
    return before;
  }

  List<Node> nodes() {
    return nodes;
  }

  List<Track> tracks() {
    return tracks;
  }

  Node start() {
    return nodes.getFirst();
  }

  Node end() {
    return nodes.getLast();
  }

  Node end(boolean last) {
    return last ? end() : start();
  }

  /** Adds a place on its side where another strand ends. */
  void meetOnSide(Node node) {
    tees.add(node);
  }

  /** The places on its side where others end, those at its own joints' ends left out. */
  List<Node> tees() {
    return tees;
  }

  /** The direction from its start to its end as it was. */
  Point direction() {
    return end().before().minus(start().before()).unit();
  }

  double lengthBefore() {
    return start().before().distance(end().before());
  }

  @Nullable Carrier now() {
    return now;
  }

  boolean isSolved() {
    return now != null;
  }

  void lay(Carrier carrier) {
    now = carrier;
  }

  /** Where another solved strand meets this solved one now, nearest to {@code by}. */
  @Nullable Point meets(Strand other, Point by) {
    Carrier a = now;
    Carrier b = other.now;
    if (a == null || b == null) {
      return null;
    }
    Point best = null;
    for (Point p : Meet.of(a, b)) {
      if (best == null || p.distance(by) < best.distance(by)) {
        best = p;
      }
    }
    return best;
  }
}
