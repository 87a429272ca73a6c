package org.jointwright.layout.keep;

import java.util.List;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Carrier.Circle;
import org.jointwright.layout.piece.Carrier.Line;
import org.jointwright.shape.Point;

/** Where two endless lines or circles meet. */
final class Meet {
  /** Lines that meet at a smaller sine than this do not fix a place. */
  private static final double PARALLEL = 1e-3;

  private Meet() {}

  /** None, one or two places. */
  static List<Point> of(Carrier a, Carrier b) {
    if (a instanceof Line l && b instanceof Line m) {
      return lines(l, m);
    }
    if (a instanceof Line l && b instanceof Circle c) {
      return lineCircle(l, c);
    }
    if (a instanceof Circle c && b instanceof Line l) {
      return lineCircle(l, c);
    }
    return a instanceof Circle c && b instanceof Circle d ? circles(c, d) : List.of();
  }

  private static List<Point> lines(Line a, Line b) {
    double sine = a.unit().cross(b.unit());
    if (Math.abs(sine) < PARALLEL) {
      return List.of();
    }
    return List.of(a.at(b.origin().minus(a.origin()).cross(b.unit()) / sine));
  }

  private static List<Point> lineCircle(Line line, Circle circle) {
    double middle = line.place(circle.centre());
    double off = line.at(middle).distance(circle.centre());
    double square = circle.radius() * circle.radius() - off * off;
    if (square < 0) {
      return List.of();
    }
    double half = Math.sqrt(square);
    return List.of(line.at(middle - half), line.at(middle + half));
  }

  private static List<Point> circles(Circle a, Circle b) {
    Point to = b.centre().minus(a.centre());
    double apart = to.norm();
    if (apart < 1 || apart > a.radius() + b.radius()) {
      return List.of();
    }
    double x = (apart * apart + a.radius() * a.radius() - b.radius() * b.radius()) / (2 * apart);
    double square = a.radius() * a.radius() - x * x;
    if (square < 0) {
      return List.of();
    }
    Point u = to.times(1 / apart);
    Point foot = a.centre().plus(u.times(x));
    Point side = u.left().times(Math.sqrt(square));
    return List.of(foot.plus(side), foot.minus(side));
  }
}
