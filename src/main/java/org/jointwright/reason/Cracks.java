package org.jointwright.reason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jointwright.check.Finding;
import org.jointwright.joint.Side;
import org.jointwright.joint.Source;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Corners;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Where it would likely crack from the inside corners that joints left out no longer serve. */
final class Cracks {
  private static final double INSIDE = Angles.INSIDE.value() + Tolerance.ANGLE.value();

  /** A finding stands no farther from its corner than one that is rounded off is large, inches. */
  private static final double NEAR = Corners.ROUNDED_OFF.value().inches();

  private Cracks() {}

  /**
   * The likely cracks.
   *
   * @param breaks what breaks without the joints
   * @param out the ids of the joints that are left out
   */
  static List<LikelyCrack> of(Ground ground, List<Finding> breaks, Set<String> out) {
    List<LikelyCrack> cracks = new ArrayList<>();
    for (Finding f : breaks) {
      if (f.key().equals("check.m3.corner")) {
        ground.spots().stream()
            .filter(s -> s.corner().interior() > INSIDE && s.at().distance(f.at()) <= NEAR)
            .min(Comparator.comparingDouble(s -> s.at().distance(f.at())))
            .flatMap(s -> from(ground, s, out))
            .filter(c -> cracks.stream().noneMatch(d -> d.from().equals(c.from())))
            .ifPresent(cracks::add);
      }
    }
    return cracks;
  }

  private static Optional<LikelyCrack> from(Ground ground, Ground.Spot spot, Set<String> out) {
    Point in = spot.before().edge().direction(1);
    Point on = spot.after().edge().direction(0);
    Point both = in.minus(on);
    // A slit turns straight back: what halves it runs on as the slit does.
    Point way = both.norm() < 1e-6 ? in : both.unit();
    var box = ground.slab().outline().ring().box();
    double far = 1 + Math.hypot(box.width(), box.height());
    Segment look = new Segment(spot.at(), spot.at().plus(way.times(far)));
    List<Map.Entry<Edge, Source>> lines = new ArrayList<>();
    for (Side s : ground.sides()) {
      lines.add(Map.entry(s.edge(), s.source()));
    }
    for (Map.Entry<Edge, Source> line : ground.jointLines()) {
      boolean isOut = line.getValue() instanceof Source.OnJoint j && out.contains(j.joint());
      if (!isOut) {
        lines.add(line);
      }
    }
    double nearest = far;
    Optional<Source> meets = Optional.empty();
    for (Map.Entry<Edge, Source> line : lines) {
      for (Crossing c : Crossing.of(look, line.getKey())) {
        double at = c.first() * far;
        if (at > 2 * Ground.ON && at < nearest) {
          nearest = at;
          meets = Optional.of(line.getValue());
        }
      }
    }
    Point to = look.at(nearest / far);
    double half = spot.corner().interior() / 2;
    return meets.map(m -> new LikelyCrack(spot.at(), to, m, half));
  }
}
