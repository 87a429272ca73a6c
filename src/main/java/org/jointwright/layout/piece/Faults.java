package org.jointwright.layout.piece;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.joint.Source;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Corners;
import org.jointwright.practice.PanelShape;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Point;

/**
 * What a piece would break if it stayed as it is: rules M1 to M5 and M8.
 *
 * @param excess how far over the limits it is, each limit's relative excess added up; 0 when it may
 *     stay
 * @param corners its inside corners
 * @param sharp places of angles under 60 degrees that no corner of the slab excuses
 * @param aspectLimit the aspect in force for it
 */
public record Faults(double excess, List<Corner> corners, List<Point> sharp, double aspectLimit) {
  /** How far past an angle still counts as met, degrees: a shade inside the checks' degree. */
  private static final double ANGLE_SHADE = 0.8;

  private static final double INSIDE = Angles.INSIDE.value() + ANGLE_SHADE;
  private static final double LEAST_ANGLE = Angles.ACUTE.value();
  private static final double ACUTE = LEAST_ANGLE - ANGLE_SHADE;
  private static final double SHARP = Angles.SHARP.value() + ANGLE_SHADE;
  private static final double VERY_SHARP = Angles.VERY_SHARP.value() + ANGLE_SHADE;
  private static final double NEAR = Tolerance.LENGTH_INCHES;
  private static final double FILL = PanelShape.LEAST_FILL.value();
  private static final double TIGHT_RADIUS = Corners.TIGHT_RADIUS.value().inches() - Limits.SHADE;
  private static final double TIGHT_TURN = Angles.CONCAVE_TURN.value() + ANGLE_SHADE;

  /** A figure is near its limit within this factor. */
  private static final double CLOSE = 1.02;

  /**
   * An inside corner.
   *
   * @param loop the loop it is on
   * @param vertex the edge that leaves it
   * @param angle the interior angle, degrees
   * @param at where
   */
  public record Corner(int loop, int vertex, double angle, Point at) {}

  /** Whether it may stay. */
  public boolean none() {
    return excess == 0;
  }

  static Faults of(Piece piece) {
    Reading r = new Reading(piece);
    for (int l = 0; l < piece.loopCount(); l++) {
      r.readLoop(l);
    }
    return r.judge();
  }

  /** Reads the corners of a piece, then judges it. */
  private static final class Reading {
    private final Piece piece;
    private final Ground ground;
    private final List<Corner> corners = new ArrayList<>();
    private final List<Point> sharp = new ArrayList<>();
    private double sharpness;
    private double keeps = 360;
    private boolean bowed;
    private double tight;

    Reading(Piece piece) {
      this.piece = piece;
      this.ground = piece.ground();
    }

    void readLoop(int l) {
      Loop loop = piece.loop(l);
      int n = loop.size();
      int start = 0;
      while (start < n && goesOn(loop, start - 1)) {
        start++;
      }
      for (int i = start; i < start + n; i++) {
        int first = i;
        double turn = 180 - loop.angle(i);
        // Corners less than 1/2 in apart count as one.
        while (i + 1 < start + n && goesOn(loop, i)) {
          turn += Math.toDegrees(loop.edge(i).turn());
          i++;
          turn += 180 - loop.angle(i);
        }
        bowed |= Ground.isBow(loop, i);
        corner(l, loop, first, i, 180 - turn);
      }
      tight = Math.max(tight, tightest(loop));
    }

    private static boolean goesOn(Loop loop, int i) {
      return loop.edge(i).length() <= NEAR || Shared.isRoundedOff(loop, i);
    }

    private void corner(int l, Loop loop, int first, int last, double found) {
      double angle = found > 355 && first == last ? 0 : found;
      Point at = loop.edge(first).start();
      if (angle > INSIDE) {
        if (!isSoft(loop, first)
            && !isJog(loop, first, last, angle)
            && !Shared.isServed(ground, loop, first, last)) {
          int rounded = first;
          while (rounded < last && !Shared.isRoundedOff(loop, rounded)) {
            rounded++;
          }
          corners.add(
              rounded == last
                  ? new Corner(l, Math.floorMod(first, loop.size()), angle, at)
                  : new Corner(
                      l, Math.floorMod(last, loop.size()), angle, loop.edge(rounded).at(0.5)));
        }
        return;
      }
      if (angle >= SHARP || !loop.isHard(first - 1) || !loop.isHard(last)) {
        if (angle < ACUTE) {
          sharp(at, angle);
        }
        return;
      }
      double own = ground.cornerAt(at, false);
      boolean whole = own < 360 && angle >= own - ANGLE_SHADE;
      if (angle < ACUTE && !(whole && own < LEAST_ANGLE)) {
        sharp(at, angle);
      }
      if (whole && ground.isOutline(loop.tag(first - 1)) && ground.isOutline(loop.tag(last))) {
        keeps = Math.min(keeps, own);
      }
    }

    private void sharp(Point at, double angle) {
      sharp.add(at);
      sharpness += 0.1 + (LEAST_ANGLE - angle) / LEAST_ANGLE;
    }

    /** A vertex of a round box-out is no corner. */
    private boolean isSoft(Loop loop, int i) {
      return loop.isHard(i)
          && loop.isHard(i - 1)
          && ground.source(loop.tag(i)) instanceof Source.OnBoxOut
          && loop.edge(i) instanceof Arc
          && loop.edge(i - 1) instanceof Arc;
    }

    /** Whether the corner and a neighbour within an inch, both on one boundary, leave none. */
    private boolean isJog(Loop loop, int first, int last, double angle) {
      boolean hard = loop.isHard(first);
      double turn = 180 - angle;
      if (loop.edge(last).length() <= 1
          && loop.isHard(first - 1) == hard
          && loop.isHard(last) == hard
          && loop.isHard(last + 1) == hard
          && 180 - (turn + 180 - loop.angle(last + 1)) <= INSIDE) {
        return true;
      }
      return loop.edge(first - 1).length() <= 1
          && loop.isHard(first - 2) == hard
          && loop.isHard(first - 1) == hard
          && loop.isHard(last) == hard
          && 180 - (turn + 180 - loop.angle(first - 1)) <= INSIDE;
    }

    /** The most concave turn at a radius under 5 ft along one unbroken stretch, degrees. */
    private static double tightest(Loop loop) {
      double most = 0;
      double run = 0;
      int n = loop.size();
      for (int i = 0; i < 2 * n; i++) {
        boolean smooth = Math.abs(loop.angle(i) - 180) < 1;
        double turn =
            loop.edge(i) instanceof Arc a && a.sweep() < 0 && a.radius() < TIGHT_RADIUS
                ? -Math.toDegrees(a.sweep())
                : 0;
        run = turn == 0 ? 0 : smooth ? run + turn : turn;
        most = Math.max(most, Math.min(run, 360));
      }
      return most;
    }

    Faults judge() {
      Limits limits = ground.limits();
      Measures m = piece.measures();
      double longest = limits.spacing() * (bowed ? Limits.BOW : 1);
      double excess = over(longSide(m, longest), longest, Limits.SHADE);
      double aspectLimit =
          keeps < VERY_SHARP
              ? Double.POSITIVE_INFINITY
              : keeps < SHARP
                  ? Math.max(PanelShape.ASPECT_LOOSE.value(), limits.aspect())
                  : limits.aspect();
      excess += over(aspect(m, aspectLimit), aspectLimit, Limits.ASPECT_SHADE);
      for (Corner c : corners) {
        excess += 0.3 + (c.angle() - 180) / 360;
      }
      excess += sharpness;
      if (tight > TIGHT_TURN) {
        excess += tight / TIGHT_TURN - 0.8;
      }
      if (m.width() < limits.narrowest() - Limits.SHADE) {
        double need =
            Math.min(
                limits.narrowest(), ground.widthAt(m.centre(), m.rectangle().direction().left()));
        excess += m.width() < need - Limits.SHADE ? 1 - m.width() / need : 0;
      }
      excess += 3 * piece.holes().size();
      double fill = piece.area() / (m.longSide() * m.shortSide());
      if (fill < FILL + 0.002) {
        excess += 0.1 + 2 * (FILL - fill);
      }
      return new Faults(excess, List.copyOf(corners), List.copyOf(sharp), aspectLimit);
    }

    /** Coarse chords leave out up to an inch of a panel that bows at both ends. */
    private double longSide(Measures m, double limit) {
      boolean near = bowed && m.longSide() > limit / CLOSE && m.longSide() < limit * CLOSE;
      return near ? Measures.closely(piece).longSide() : m.longSide();
    }

    /**
     * Which rectangle is the squarest may hang on the chords of an arc: near the limit, closely.
     */
    private double aspect(Measures m, double limit) {
      boolean near = bowed && m.aspect() > limit / CLOSE && m.aspect() < limit * CLOSE;
      return near ? Measures.closely(piece).aspect() : m.aspect();
    }

    private static double over(double value, double limit, double shade) {
      return value <= limit + shade ? 0 : value / limit - 1;
    }
  }
}
