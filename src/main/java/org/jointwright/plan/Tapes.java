package org.jointwright.plan;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** Makes tapes of the sides of all slabs. */
final class Tapes {
  /** Steeper than this a side runs from below upwards, else from the left to the right. */
  private static final double STEEP = 1.4;

  private Tapes() {}

  /** The sides run the way they are taped, each line once, with names that all differ. */
  static List<Tape> distinct(List<Tape> sides) {
    List<Tape> tapes = new ArrayList<>();
    for (Tape side : sides) {
      Tape tape = side.isStraight() ? forward(side) : side;
      if (tapes.stream().anyMatch(t -> covers(t, tape))) {
        continue;
      }
      tapes.removeIf(t -> covers(tape, t));
      boolean taken = tapes.stream().anyMatch(t -> t.name().equals(tape.name()));
      tapes.add(taken ? reversed(tape) : tape);
    }
    return tapes;
  }

  /** The straight sides that lie on a longer one of another slab, the way they would be taped. */
  static List<Tape> within(List<Tape> sides, List<Tape> tapes) {
    return sides.stream()
        .filter(Tape::isStraight)
        .map(Tapes::forward)
        .filter(s -> tapes.stream().noneMatch(t -> t.slab().equals(s.slab()) && covers(t, s)))
        .filter(s -> tapes.stream().noneMatch(t -> covers(t, s) && covers(s, t)))
        .toList();
  }

  private static Tape forward(Tape side) {
    Point d = side.to().at().minus(side.from().at());
    boolean steep = Math.abs(d.y()) > STEEP * Math.abs(d.x());
    return (steep ? d.y() : d.x()) < 0 ? reversed(side) : side;
  }

  private static Tape reversed(Tape t) {
    List<Edge> edges = t.path().edges().reversed().stream().map(Edge::reversed).toList();
    return new Tape(t.slab(), t.to(), t.from(), new Path(edges), !t.along());
  }

  /** Whether every part of {@code inner} lies on {@code outer}. */
  private static boolean covers(Tape outer, Tape inner) {
    return inner.path().edges().stream()
        .allMatch(
            e ->
                outer.carries(e.start(), Lettering.SAME_PLACE)
                    && outer.carries(e.at(0.5), Lettering.SAME_PLACE)
                    && outer.carries(e.end(), Lettering.SAME_PLACE));
  }
}
