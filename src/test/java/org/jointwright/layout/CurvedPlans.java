package org.jointwright.layout;

import java.util.List;
import java.util.Random;
import org.jointwright.measure.Length;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;

/** Invented plans of slabs with straight and curved sides, the same for the same seed. */
final class CurvedPlans {
  /** What is made. */
  enum Kind {
    /** A rectangle with one side bulged. */
    BULGED,
    /** A rectangle with a half circle at one end. */
    HALF_ROUND,
    /** A rectangle with two opposite sides bulged. */
    BARREL,
    /** A side that leaves its neighbour smoothly and falls off to the other. */
    QUARTER_END,
    /** A bowed side between neighbours of two lengths. */
    SLANTED_BOW,
    /** A drive that widens by an arc towards the street, on one side or both. */
    RETURN,
    /** Four arcs without a corner between. */
    KIDNEY,
    /** A rectangle with a round bite taken out of one side. */
    PLANTER
  }

  private final Random random;

  private CurvedPlans(long seed) {
    this.random = new Random(seed);
  }

  /** A plan of a kind. */
  static Plan of(Kind kind, long seed) {
    return plan(new CurvedPlans(seed * 37 + kind.ordinal()).outline(kind));
  }

  /** A plan of that slab, 4 in thick. */
  static Plan plan(Outline outline) {
    Slab slab = Slab.of("slab", outline).withThickness(Length.inches(4));
    return Plan.EMPTY.withSlabs(List.of(slab));
  }

  private Outline outline(Kind kind) {
    return switch (kind) {
      case BULGED -> {
        double w = feet(16, 34);
        yield bulged(w, feet(8, 22), Math.rint(w * (0.22 + 0.24 * random.nextDouble())), 0);
      }
      case HALF_ROUND -> {
        double w = feet(14, 44);
        yield bulged(w, feet(6, 24), w / 2, 0);
      }
      case BARREL -> {
        double w = feet(16, 30);
        double rise = Math.rint(w * (0.2 + 0.25 * random.nextDouble()));
        yield bulged(w, feet(8, 22), rise, random.nextBoolean() ? rise : rise / 2);
      }
      case QUARTER_END -> quarterEnd(feet(14, 26), feet(7, 16), 0.6 + random.nextDouble());
      case SLANTED_BOW -> slanted(feet(16, 26), feet(8, 16), feet(9, 15), feet(1, 2));
      case RETURN ->
          returned(
              feet(10, 20),
              feet(8, 22),
              feet(8, 16),
              30 + 5 * random.nextInt(5),
              random.nextBoolean());
      case KIDNEY -> kidney(feet(6, 14), feet(12, 22), 60 + 10 * random.nextInt(8));
      case PLANTER -> {
        double w = feet(18, 34);
        double r = feet(3, 7);
        yield bitten(w, feet(14, 24), r, Math.rint(w / 2 + (w / 2 - r - 60) * random.nextDouble()));
      }
    };
  }

  /** A whole number of inches between two lengths in feet. */
  private double feet(double from, double to) {
    return Math.rint(12 * (from + (to - from) * random.nextDouble()));
  }

  private static Vertex at(double x, double y) {
    return Vertex.at(new Point(x, y));
  }

  private static Vertex arc(double x, double y, double viaX, double viaY) {
    return Vertex.arc(new Point(x, y), new Point(viaX, viaY));
  }

  /** A rectangle whose far side bulges by {@code far}, and its near one by {@code near}, inches. */
  static Outline bulged(double width, double height, double far, double near) {
    return new Outline(
        List.of(
            near > 0 ? arc(0, 0, width / 2, -near) : at(0, 0),
            at(width, 0),
            arc(width, height, width / 2, height + far),
            at(0, height)));
  }

  /** Its far side leaves the right one smoothly and rises by a share of the width to the left. */
  static Outline quarterEnd(double width, double height, double share) {
    double rise = share * width;
    double r = (width * width + rise * rise) / (2 * width);
    double turn = Math.atan2(rise, r - width) / 2;
    double x = width - r;
    return new Outline(
        List.of(
            at(0, 0),
            at(width, 0),
            arc(width, height, x + r * Math.cos(turn), height + r * Math.sin(turn)),
            at(0, height + rise)));
  }

  /** Its far side bows by {@code bow} between a left one and a right one longer by {@code more}. */
  static Outline slanted(double width, double height, double more, double bow) {
    double length = Math.hypot(width, more);
    return new Outline(
        List.of(
            at(0, 0),
            at(width, 0),
            arc(
                width,
                height + more,
                width / 2 - bow * more / length,
                height + more / 2 + bow * width / length),
            at(0, height)));
  }

  /**
   * A drive of that width which widens towards its near end by an arc that turns by so many
   * degrees: a whole quarter would end in a tip that fills too little of any panel.
   */
  static Outline returned(
      double width, double length, double radius, double degrees, boolean both) {
    double turn = Math.toRadians(degrees);
    double up = radius * Math.sin(turn);
    double out = radius * (1 - Math.cos(turn));
    double viaX = radius * (1 - Math.cos(turn / 2));
    double viaY = up - radius * Math.sin(turn / 2);
    Vertex street = arc(width + out, 0, width + viaX, viaY);
    Vertex right = at(width, up);
    Vertex far = at(width, up + length);
    Vertex left = at(0, up + length);
    return new Outline(
        both
            ? List.of(at(-out, 0), street, right, far, left, arc(0, up, -viaX, viaY))
            : List.of(at(0, 0), street, right, far, left));
  }

  /** A band about an inner radius, its ends half round. */
  static Outline kidney(double inner, double width, double degrees) {
    double outer = inner + width;
    double half = Math.toRadians(degrees) / 2;
    double middle = inner + width / 2;
    Point cap = polar(middle, half).plus(polar(width / 2, half + Math.PI / 2));
    Point other = polar(middle, -half).plus(polar(width / 2, -half - Math.PI / 2));
    return new Outline(
        List.of(
            Vertex.arc(polar(outer, -half), polar(outer, 0)),
            Vertex.arc(polar(outer, half), cap),
            Vertex.arc(polar(inner, half), polar(inner, 0)),
            Vertex.arc(polar(inner, -half), other)));
  }

  private static Point polar(double radius, double angle) {
    return new Point(radius * Math.cos(angle), radius * Math.sin(angle));
  }

  /** A rectangle with a half circle about a place on its far side taken out. */
  static Outline bitten(double width, double height, double radius, double at) {
    return new Outline(
        List.of(
            at(0, 0),
            at(width, 0),
            at(width, height),
            arc(at + radius, height, at, height - radius),
            at(at - radius, height),
            at(0, height)));
  }
}
