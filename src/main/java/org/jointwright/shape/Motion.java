package org.jointwright.shape;

/**
 * A rigid motion of the plane: a turn or a mirroring, then a move.
 *
 * @param across where the unit vector to the right goes; of length 1
 * @param isMirrored whether left and right are changed about
 * @param by what is added after that, inches
 */
public record Motion(Point across, boolean isMirrored, Point by) {
  private static final Point RIGHT = new Point(1, 0);
  private static final Point ORIGIN = new Point(0, 0);

  /** A move by a vector. */
  public static Motion by(Point by) {
    return new Motion(RIGHT, false, by);
  }

  /** A turn about a point, degrees counter-clockwise; quarter turns are exact. */
  public static Motion turn(Point about, double degrees) {
    Point across = quarters(degrees);
    Motion turn = new Motion(across, false, ORIGIN);
    return new Motion(across, false, about.minus(turn.of(about)));
  }

  private static Point quarters(double degrees) {
    double part = ((degrees % 360) + 360) % 360;
    if (part == 0) {
      return RIGHT;
    }
    if (part == 90) {
      return RIGHT.left();
    }
    if (part == 180) {
      return new Point(-1, 0);
    }
    return part == 270 ? new Point(0, -1) : RIGHT.turned(Math.toRadians(part));
  }

  /** The mirror image at a line. */
  public static Motion mirror(Mirror line) {
    Point across = line.turned(RIGHT);
    Motion flipped = new Motion(across, true, ORIGIN);
    return new Motion(across, true, line.at().minus(flipped.of(line.at())));
  }

  /** Where a point goes. */
  public Point of(Point p) {
    if (!isMirrored && across.equals(RIGHT)) {
      return p.plus(by);
    }
    Point up = isMirrored ? across.left().times(-1) : across.left();
    return across.times(p.x()).plus(up.times(p.y())).plus(by);
  }

  /** Where an edge goes, from where its start goes; mirrored, an arc turns the other way. */
  public Edge of(Edge edge) {
    return switch (edge) {
      case Segment s -> new Segment(of(s.start()), of(s.end()));
      case Arc a ->
          new Arc(of(a.start()), of(a.end()), of(a.centre()), isMirrored ? -a.sweep() : a.sweep());
    };
  }

  /** This motion and then another. */
  public Motion then(Motion next) {
    Point to = new Motion(next.across, next.isMirrored, ORIGIN).of(across);
    return new Motion(to, isMirrored != next.isMirrored, next.of(by));
  }
}
