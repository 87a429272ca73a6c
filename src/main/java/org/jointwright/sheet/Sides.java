package org.jointwright.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Tape;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** Finds points from the sides of the slabs. */
record Sides(Lettering lettering) {
  /** A point nearer to a side than this is said to stand on it; inches. */
  static final double ON = 0.1;

  /**
   * A point told by a corner or a mark on a side, the slab's own sides first: one that lies on a
   * longer side of another slab is taped from its own corners.
   */
  Optional<Whereabouts> onSide(String slab, Point p) {
    Optional<Whereabouts> corner = lettering.cornerAt(p).map(Whereabouts.AtCorner::new);
    return corner.or(
        () ->
            Stream.concat(lettering.within().stream(), lettering.tapes().stream())
                .filter(t -> t.carries(p, ON))
                .filter(t -> t.slab().equals(slab) || !lettering.within().contains(t))
                .min(Comparator.comparing(t -> !t.slab().equals(slab)))
                .map(t -> new Whereabouts.OnTape(t, t.distanceTo(p))));
  }

  /** A point told by going along a straight side and square off it. */
  Whereabouts.Off off(String slab, Point p) {
    Tape tape = base(slab, p);
    Point u = tape.to().at().minus(tape.from().at()).unit();
    Point v = p.minus(tape.from().at());
    return new Whereabouts.Off(tape, u.dot(v), u.cross(v));
  }

  /** The same from a side of the slab’s outline: openings are not there yet. */
  Whereabouts.Off fromOutline(Slab slab, Point p) {
    Ring outline = slab.outline().ring();
    List<Tape> own =
        lettering.tapes().stream().filter(t -> outline.distance(t.path().middle()) < ON).toList();
    return new Sides(new Lettering(lettering.corners(), own)).off(slab.id(), p);
  }

  /** The straight side that a point is told from: the nearest that it stands square to. */
  private Tape base(String slab, Point p) {
    List<Tape> straight =
        lettering.tapes().stream()
            .filter(t -> t.isStraight() && !t.from().equals(t.to()))
            .sorted(Comparator.comparing(t -> !t.slab().equals(slab)))
            .toList();
    if (straight.isEmpty()) {
      return chord();
    }
    return straight.stream()
        .filter(t -> t.slab().equals(straight.getFirst().slab()))
        .min(Comparator.comparingDouble(t -> cost(t, p)))
        .orElseThrow();
  }

  private static double cost(Tape t, Point p) {
    Point d = t.to().at().minus(t.from().at());
    double along = d.unit().dot(p.minus(t.from().at()));
    double past = Math.max(0, Math.max(-along, along - d.norm()));
    // A short side aims badly: far off it, a small slip in direction becomes a large one.
    double off = Math.abs(d.unit().cross(p.minus(t.from().at())));
    return off * (1 + 2 * off / d.norm()) + 20 * past;
  }

  /** Where every side is an arc, the string between the first two corners serves as one. */
  private Tape chord() {
    var a = lettering.corners().getFirst();
    var b = lettering.corners().get(1);
    return new Tape(
        lettering.tapes().getFirst().slab(),
        a,
        b,
        org.jointwright.shape.Path.straight(a.at(), b.at()),
        true);
  }
}
