package org.jointwright.check.face;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.joint.Source;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Loops put together side by side for a test; inches. */
final class Round {
  private final List<Step> steps = new ArrayList<>();
  private Point at;

  private Round(Point start) {
    at = start;
  }

  static Round from(double x, double y) {
    return new Round(new Point(x, y));
  }

  /** The outline through some places, all its sides edges of the concrete. */
  static Loop through(double... xy) {
    Round round = from(xy[0], xy[1]);
    for (int i = 2; i < xy.length; i += 2) {
      round.to(xy[i], xy[i + 1]);
    }
    return round.to(xy[0], xy[1]).loop();
  }

  Round to(double x, double y) {
    return add(new Segment(at, new Point(x, y)), new Source.OnOutline(0), true, false);
  }

  Round joint(double x, double y) {
    return add(new Segment(at, new Point(x, y)), new Source.OnJoint("J1"), false, false);
  }

  /** Along a box-out, one that is round where {@code soft}. */
  Round boxOut(String fixed, boolean soft, double x, double y) {
    return add(new Segment(at, new Point(x, y)), new Source.OnBoxOut(fixed, 0), true, soft);
  }

  /** To the right on a circle of a radius by some degrees, going on in a direction (degrees). */
  Round right(double radius, double heading, double degrees) {
    return add(arc(at, radius, heading, -degrees), new Source.OnOutline(0), true, false);
  }

  Round left(double radius, double heading, double degrees) {
    return add(arc(at, radius, heading, degrees), new Source.OnOutline(0), true, false);
  }

  static Edge arc(Point from, double radius, double heading, double degrees) {
    double towards = Math.toRadians(heading + Math.copySign(90, degrees));
    Point centre = from.plus(new Point(radius, 0).turned(towards));
    double sweep = Math.toRadians(degrees);
    Point end = centre.plus(from.minus(centre).turned(sweep));
    return new org.jointwright.shape.Arc(from, end, centre, sweep);
  }

  private Round add(Edge edge, Source source, boolean hard, boolean soft) {
    steps.add(new Step(edge, source, hard, soft));
    at = edge.end();
    return this;
  }

  Loop loop() {
    // Refuses what does not close up.
    if (at.distance(steps.getFirst().edge().start()) > 1e-9) {
      throw new IllegalStateException("ends at " + at);
    }
    return new Loop(steps);
  }

  /** The same sides, begun at another one. */
  static Loop begunAt(Loop loop, int first) {
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < loop.size(); i++) {
      steps.add(loop.step(first + i));
    }
    return new Loop(steps);
  }
}
