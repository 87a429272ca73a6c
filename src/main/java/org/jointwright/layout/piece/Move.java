package org.jointwright.layout.piece;

import org.jointwright.shape.Mirror;
import org.jointwright.shape.Point;

/**
 * A cut to be made.
 *
 * @param carrier the line or circle it runs along
 * @param seed a point inside the piece it cuts; the cut holds it
 * @param reach how far it goes
 */
public record Move(Carrier carrier, Point seed, Reach reach) {
  /** How far a cut goes. */
  public enum Reach {
    /** Across one piece. */
    PIECE,
    /** On through every joint it meets, to the slab's own edges. */
    THROUGH
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
    return new Move(other, other.at(other.place(seed)), reach);
  }

  /** Its mirror image. */
  Move mirrored(Mirror mirror) {
    return new Move(carrier.mirrored(mirror), mirror.of(seed), reach);
  }

  /** The same cut with another reach. */
  public Move reaching(Reach other) {
    return new Move(carrier, seed, other);
  }
}
