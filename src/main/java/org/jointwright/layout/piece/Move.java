package org.jointwright.layout.piece;

import java.util.List;
import org.jointwright.shape.Mirror;
import org.jointwright.shape.Point;

/**
 * A cut to be made.
 *
 * @param carrier the line or circle it runs along
 * @param seed a point inside the piece it cuts; the cut holds it
 * @param reach how far it goes
 * @param limits two places on either side of the seed, beyond which it ends at the first joint it
 *     meets however far it reaches; none where it is not so limited
 */
public record Move(Carrier carrier, Point seed, Reach reach, List<Point> limits) {
  /** How far a cut goes. */
  public enum Reach {
    /** Across one piece. */
    PIECE,
    /** On through every joint it meets, to the slab's own edges. */
    THROUGH
  }

  /** Copies the list. */
  public Move {
    limits = List.copyOf(limits);
  }

  /** A cut without limits but its reach. */
  public Move(Carrier carrier, Point seed, Reach reach) {
    this(carrier, seed, reach, List.of());
  }

  /** A straight cut through two points, seeded half way. */
  public static Move between(Point a, Point b, Reach reach) {
    return new Move(Carrier.Line.through(a, b), a.towards(b, 0.5), reach);
  }

  /** A cut that bends half way: two straight joints that meet. */
  public static Move bent(Point a, Point bend, Point b) {
    Bent carrier = Bent.through(a, bend, b);
    // The bend itself may come to stand on a joint laid since; a seed on an arm would too.
    return new Move(carrier, bend, Reach.PIECE);
  }

  /** The same cut on another carrier, its seed brought onto it. */
  public Move on(Carrier other) {
    return new Move(other, other.at(other.place(seed)), reach, limits);
  }

  /** Its mirror image. */
  Move mirrored(Mirror mirror) {
    return new Move(
        carrier.mirrored(mirror), mirror.of(seed), reach, limits.stream().map(mirror::of).toList());
  }

  /** The same cut with another reach. */
  public Move reaching(Reach other) {
    return new Move(carrier, seed, other, limits);
  }

  /** The same cut on through joints, but no farther than the first it meets beyond two places. */
  public Move upTo(Point one, Point other) {
    return new Move(carrier, seed, Reach.THROUGH, List.of(one, other));
  }

  /** Whether it goes on beyond a joint that it meets at {@code p}. */
  boolean goesBeyond(Point p) {
    double at = fromSeed(p);
    return reach == Reach.THROUGH
        && limits.stream()
            .mapToDouble(this::fromSeed)
            .noneMatch(l -> l < 0 == at < 0 && Math.abs(at) >= Math.abs(l));
  }

  private double fromSeed(Point p) {
    double along = carrier.place(p) - carrier.place(seed);
    return carrier instanceof Carrier.Circle ? Math.IEEEremainder(along, 2 * Math.PI) : along;
  }
}
