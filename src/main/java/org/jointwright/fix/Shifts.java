package org.jointwright.fix;

import java.util.List;
import java.util.Optional;
import org.jointwright.fix.line.Relaid;
import org.jointwright.fix.line.Straight;
import org.jointwright.fix.name.JointName;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.shape.Point;

/** Fixes that lay a line of joints elsewhere, with all that ends on it. */
final class Shifts {
  /** A smaller shift is none, inches. */
  private static final double LEAST = 1.0 / 32;

  private Shifts() {}

  /** The line shifted to its left, so that it reaches a straight side at a whole mark. */
  static Optional<Fix> toWholeMark(Broken broken, Straight line, double by) {
    Point to = line.at().plus(line.heading().left().times(by));
    Point snapped = broken.marks().snapped(broken.floor(), to, line.heading());
    return through(broken, line, snapped);
  }

  /** The line shifted until it runs through a place. */
  static Optional<Fix> through(Broken broken, Straight line, Point to) {
    double by = line.off(to);
    return line.isLocked() || Math.abs(by) < LEAST
        ? Optional.empty()
        : Relaid.onto(broken.floor(), line, to, line.heading())
            .map(changed -> said(broken, line, changed, Math.abs(by)));
  }

  /** The line turned: laid through a place with another heading. */
  static Optional<Fix> turned(
      Broken broken, Straight line, Point through, Point heading, String key) {
    return line.isLocked()
        ? Optional.empty()
        : Relaid.onto(broken.floor(), line, through, heading)
            .map(
                changed ->
                    Fix.of(
                        key,
                        "fix.did.turn",
                        List.of(broken.name(line.joints().getFirst())),
                        broken.redraft().with(changed).edit()));
  }

  private static Fix said(Broken broken, Straight line, List<Joint> changed, double by) {
    JointName id = broken.name(line.joints().getFirst());
    Length far = Length.inches(by);
    var edit = broken.redraft().with(changed).edit();
    return broken
        .marks()
        .of(changed.getFirst().path())
        .map(m -> Fix.of("fix.move.mark", "fix.did.move", List.of(id, far, m.tape(), m.at()), edit))
        .orElseGet(() -> Fix.of("fix.move.plain", "fix.did.move", List.of(id, far), edit));
  }
}
