package org.jointwright.layout.piece;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** The main directions of a piece. */
public final class Axes {
  private static final double SAME = Math.toRadians(2);

  private Axes() {}

  /**
   * The directions of its straight edges, taken square to each other as one, the longest first;
   * those under a tenth of the longest left out; before them the one that the user wants to lead.
   * Unit vectors in the first quarter turn.
   */
  public static List<Point> of(Piece piece) {
    List<double[]> found = new ArrayList<>();
    for (int l = 0; l < piece.loopCount(); l++) {
      Loop loop = piece.loop(l);
      for (Edge e : loop.edges()) {
        if (e instanceof Segment s && s.length() > 1) {
          gather(found, s);
        }
      }
    }
    if (found.isEmpty()) {
      found.add(new double[] {0, 1});
    }
    found.sort((a, b) -> Double.compare(b[1], a[1]));
    double longest = found.getFirst()[1];
    List<Point> axes =
        found.stream()
            .filter(f -> f[1] >= 0.1 * longest)
            .limit(4)
            .map(f -> new Point(Math.cos(f[0]), Math.sin(f[0])))
            .toList();
    return piece.ground().lead().map(u -> led(u, axes)).orElse(axes);
  }

  private static List<Point> led(Point lead, List<Point> axes) {
    double angle = quarter(lead.angle());
    List<Point> all = new ArrayList<>(List.of(new Point(Math.cos(angle), Math.sin(angle))));
    for (Point u : axes) {
      if (Math.abs(Math.IEEEremainder(u.angle() - angle, Math.PI / 2)) >= SAME) {
        all.add(u);
      }
    }
    return all;
  }

  private static void gather(List<double[]> found, Segment s) {
    double angle = quarter(s.end().minus(s.start()).angle());
    for (double[] f : found) {
      double off = Math.IEEEremainder(angle - f[0], Math.PI / 2);
      if (Math.abs(off) < SAME) {
        // The direction of the longest edge stands for all; a mean would fit none exactly.
        if (s.length() > f[2]) {
          f[0] = angle;
          f[2] = s.length();
        }
        f[1] += s.length();
        return;
      }
    }
    found.add(new double[] {angle, s.length(), s.length()});
  }

  private static double quarter(double angle) {
    double a = angle % (Math.PI / 2);
    if (a < -1e-9) {
      a += Math.PI / 2;
    }
    return a > Math.PI / 2 - 1e-9 ? 0 : Math.max(0, a);
  }
}
