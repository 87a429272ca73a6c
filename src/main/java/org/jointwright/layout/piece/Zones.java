package org.jointwright.layout.piece;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * Where no new joint may run, at the user's word.
 *
 * @param rings the edges of the zones
 */
public record Zones(List<Ring> rings) {
  /** A slab without such zones. */
  public static final Zones NONE = new Zones(List.of());

  /** What runs this far into a zone or less touches it only, inches. */
  private static final double TOUCH = 0.5;

  /** A stretch of no more than this deeper in a zone is let go, inches: a shade of a tolerance. */
  private static final double LONGEST = 0.4;

  /** A joint may run slowly out of a zone: so many parts of what lies in it are looked at. */
  private static final int PARTS = 16;

  /** Copies the list. */
  public Zones {
    rings = List.copyOf(rings);
  }

  /** Whether a joint there would run in a zone for more than a touch. */
  public boolean bar(Edge path) {
    Box box = path.box();
    for (Ring ring : rings) {
      if (ring.box().meets(box) && inside(path, ring) > LONGEST) {
        return true;
      }
    }
    return false;
  }

  /** The corners of the zones whose boxes meet {@code box}: a line may pass a zone there. */
  public List<Point> corners(Box box) {
    return rings.stream()
        .filter(r -> r.box().meets(box))
        .flatMap(r -> r.vertices().stream())
        .toList();
  }

  /** How far a joint runs inside a ring, inches. */
  private static double inside(Edge path, Ring ring) {
    List<Double> shares = new ArrayList<>(List.of(0.0, 1.0));
    for (Edge side : ring.edges()) {
      Carriers.of(side)
          .crossings(path)
          .forEach(
              c -> {
                if (side.distance(path.at(c.share())) < TOUCH) {
                  shares.add(c.share());
                }
              });
    }
    shares.sort(null);
    double inside = 0;
    for (int i = 1; i < shares.size(); i++) {
      double part = (shares.get(i) - shares.get(i - 1)) / PARTS;
      boolean in = ring.contains(path.at((shares.get(i - 1) + shares.get(i)) / 2));
      for (int k = 0; k < PARTS && in; k++) {
        boolean deep = ring.distance(path.at(shares.get(i - 1) + (k + 0.5) * part)) > TOUCH;
        inside += deep ? part * path.length() : 0;
      }
    }
    return inside;
  }
}
