package org.jointwright.layout.keep;

import java.util.List;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jspecify.annotations.Nullable;

/** Where concentric joints run now: between the arcs of the slab that share their middle. */
final class Rounds {
  /** Middles this near to each other are one, inches. */
  private static final double SAME = 0.5;

  private final List<Stretch> stretches;

  Rounds(List<Stretch> stretches) {
    this.stretches = stretches;
  }

  /** An arc before and now. */
  private record Pair(Arc before, Arc now) {}

  /** The circle of a round strand now; the same where no arc of the slab has its middle. */
  Carrier now(Strand strand) {
    if (!(strand.before() instanceof Carrier.Circle circle)) {
      return strand.before();
    }
    Pair inside = null;
    Pair outside = null;
    for (Stretch s : stretches) {
      for (int i = 0; i < s.before().size() && s.before().size() == s.now().size(); i++) {
        Edge e = s.before().get(i);
        if (e instanceof Arc a
            && s.now().get(i) instanceof Arc b
            && a.centre().distance(circle.centre()) <= SAME) {
          Pair pair = new Pair(a, b);
          if (a.radius() <= circle.radius()) {
            inside = inside == null || inside.before.radius() < a.radius() ? pair : inside;
          } else {
            outside = outside == null || outside.before.radius() > a.radius() ? pair : outside;
          }
        }
      }
    }
    return between(circle, inside, outside);
  }

  private static Carrier between(
      Carrier.Circle circle, @Nullable Pair inside, @Nullable Pair outside) {
    double r = circle.radius();
    if (inside != null && outside != null) {
      double low = inside.before.radius();
      double share = (r - low) / (outside.before.radius() - low);
      double radius = inside.now.radius() + share * (outside.now.radius() - inside.now.radius());
      return moved(circle, inside, inside.now.centre(), radius);
    }
    Pair only = inside == null ? outside : inside;
    return only == null
        ? circle
        : moved(circle, only, only.now.centre(), r * only.now.radius() / only.before.radius());
  }

  private static Carrier moved(Carrier.Circle circle, Pair by, Point middle, double radius) {
    Point centre = circle.centre().plus(middle.minus(by.before.centre()));
    boolean still =
        centre.distance(circle.centre()) < Strand.HAIR
            && Math.abs(radius - circle.radius()) < Strand.HAIR;
    return still ? circle : new Carrier.Circle(centre, radius);
  }
}
