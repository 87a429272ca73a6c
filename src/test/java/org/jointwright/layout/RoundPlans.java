package org.jointwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jointwright.measure.Length;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;

/** Invented plans of round slabs and of slabs with fixed objects, the same for the same seed. */
final class RoundPlans {
  /** What is made. */
  enum Kind {
    DISC,
    RING,
    SECTOR,
    SEGMENT,
    BAND,
    WIDENING_BAND,
    S_CURVE,
    NECKED_DISC,
    FILLET,
    POST,
    EDGE_POST,
    CORNER_POST,
    TWO_POSTS,
    COLUMN_GRID,
    DRAIN,
    LONG_DRAIN,
    TURNED_COLUMN,
    POST_IN_L,
    ROUND_OPENING,
    TURNED_OPENING
  }

  private final Random random;
  private final List<FixedObject> objects = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();

  private RoundPlans(long seed) {
    this.random = new Random(seed);
  }

  /** A plan of a kind. */
  static Plan of(Kind kind, long seed) {
    return new RoundPlans(seed * 31 + kind.ordinal()).plan(kind);
  }

  private Plan plan(Kind kind) {
    Length thickness = Length.inches(4 + random.nextInt(3));
    Outline outline = outline(kind);
    Slab slab =
        Slab.of("slab", outline).withThickness(thickness).withOpenings(List.copyOf(openings));
    return Plan.EMPTY.withSlabs(List.of(slab)).withFixed(List.copyOf(objects));
  }

  /** A whole number of inches between two lengths in feet. */
  private double feet(double from, double to) {
    return Math.rint(12 * (from + (to - from) * random.nextDouble()));
  }

  private double degrees(double from, double to) {
    return Math.toRadians(Math.rint(from + (to - from) * random.nextDouble()));
  }

  private Outline outline(Kind kind) {
    return switch (kind) {
      case DISC -> disc(new Point(0, 0), feet(3, 22));
      case RING -> ring();
      case SECTOR -> sector(feet(5, 18), degrees(50, 300));
      case SEGMENT -> segment(feet(6, 20), degrees(100, 300));
      case BAND -> band(feet(8, 40), feet(4, 16), degrees(30, 170));
      case WIDENING_BAND -> widening();
      case S_CURVE -> sCurve(feet(12, 40), feet(4, 14), degrees(25, 85));
      case NECKED_DISC -> necked(feet(8, 20), feet(3, 6), feet(8, 30));
      case FILLET -> fillet();
      case ROUND_OPENING, TURNED_OPENING -> opened(kind);
      case POST_IN_L -> l();
      default -> withObjects(kind);
    };
  }

  private static Point polar(double radius, double angle) {
    return new Point(radius * Math.cos(angle), radius * Math.sin(angle));
  }

  private static Outline disc(Point c, double r) {
    return new Outline(
        List.of(
            Vertex.arc(c.plus(polar(r, 0)), c.plus(polar(r, Math.PI / 2))),
            Vertex.arc(c.plus(polar(r, Math.PI)), c.plus(polar(r, -Math.PI / 2)))));
  }

  private Outline ring() {
    double outer = feet(5, 18);
    double inner = Math.rint(outer * (0.2 + 0.55 * random.nextDouble()));
    openings.add(new Opening(disc(new Point(0, 0), inner), java.util.Map.of(), Kept.NOTHING));
    return disc(new Point(0, 0), outer);
  }

  private static Outline sector(double r, double sweep) {
    return new Outline(
        List.of(
            Vertex.at(new Point(0, 0)),
            Vertex.arc(polar(r, 0), polar(r, sweep / 2)),
            Vertex.at(polar(r, sweep))));
  }

  private static Outline segment(double r, double sweep) {
    return new Outline(
        List.of(Vertex.arc(polar(r, 0), polar(r, sweep / 2)), Vertex.at(polar(r, sweep))));
  }

  private static Outline band(double inner, double width, double sweep) {
    double outer = inner + width;
    return new Outline(
        List.of(
            Vertex.at(polar(inner, 0)),
            Vertex.arc(polar(outer, 0), polar(outer, sweep / 2)),
            Vertex.at(polar(outer, sweep)),
            Vertex.arc(polar(inner, sweep), polar(inner, sweep / 2))));
  }

  private Outline widening() {
    double inner = feet(10, 35);
    double from = feet(4, 9);
    double to = from + feet(1, 7);
    double sweep = degrees(40, 110);
    Point a = polar(inner, 0);
    Point b = polar(inner, sweep);
    Point c = polar(inner + to, sweep);
    Point d = polar(inner + from, 0);
    Point via = polar(inner + (from + to) / 2, sweep / 2);
    return new Outline(
        List.of(
            Vertex.at(a),
            Vertex.arc(d, via),
            Vertex.at(c),
            Vertex.arc(b, polar(inner, sweep / 2))));
  }

  /** A drive of two bends, one each way, about circles of that radius at its middle, inches. */
  static Outline sCurve(double radius, double width, double sweep) {
    double in = radius - width / 2;
    double out = radius + width / 2;
    // The second bend turns about the first's centre mirrored at the end of the first.
    Point second = polar(2 * radius, sweep);
    double back = sweep + Math.PI;
    return new Outline(
        List.of(
            Vertex.at(polar(in, 0)),
            Vertex.arc(polar(out, 0), polar(out, sweep / 2)),
            Vertex.arc(polar(out, sweep), second.plus(polar(in, back - sweep / 2))),
            Vertex.at(second.plus(polar(in, back - sweep))),
            Vertex.arc(
                second.plus(polar(out, back - sweep)), second.plus(polar(out, back - sweep / 2))),
            Vertex.arc(polar(in, sweep), polar(in, sweep / 2))));
  }

  private static Outline necked(double r, double half, double length) {
    double y = -Math.sqrt(r * r - half * half);
    return new Outline(
        List.of(
            Vertex.at(new Point(-half, y - length)),
            Vertex.at(new Point(half, y - length)),
            Vertex.arc(new Point(half, y), new Point(0, r)),
            Vertex.at(new Point(-half, y))));
  }

  private Outline fillet() {
    double w = feet(16, 30);
    double h = feet(16, 30);
    double x = feet(6, 10);
    double y = feet(6, 10);
    double r = random.nextBoolean() ? feet(0.2, 0.5) : feet(1, 5);
    double bow = r * (1 - Math.sqrt(0.5));
    return new Outline(
        List.of(
            Vertex.at(new Point(0, 0)),
            Vertex.at(new Point(w, 0)),
            Vertex.at(new Point(w, y)),
            Vertex.arc(new Point(x + r, y), new Point(x + bow, y + bow)),
            Vertex.at(new Point(x, y + r)),
            Vertex.at(new Point(x, h)),
            Vertex.at(new Point(0, h))));
  }

  private static Outline rectangle(double w, double h) {
    return Outline.of(List.of(new Point(0, 0), new Point(w, 0), new Point(w, h), new Point(0, h)));
  }

  private Outline opened(Kind kind) {
    double w = feet(14, 36);
    double h = feet(14, 30);
    double r = feet(1, 4);
    Point c = new Point(between(r + 48, w - r - 48), between(r + 48, h - r - 48));
    Outline opening = disc(c, r);
    if (kind == Kind.TURNED_OPENING) {
      double turn = degrees(10, 80);
      opening =
          Outline.of(
              List.of(
                  c.plus(polar(r, turn)),
                  c.plus(polar(r, turn + Math.PI / 2)),
                  c.plus(polar(r, turn + Math.PI)),
                  c.plus(polar(r, turn - Math.PI / 2))));
    }
    openings.add(new Opening(opening, java.util.Map.of(), Kept.NOTHING));
    return rectangle(w, h);
  }

  private double between(double from, double to) {
    return Math.rint(to <= from ? (from + to) / 2 : from + (to - from) * random.nextDouble());
  }

  private Outline l() {
    double w = feet(16, 34);
    double h = feet(16, 30);
    double x = feet(6, 12);
    double y = feet(6, 12);
    post(between(10, x - 10), between(10, h - 10));
    return Outline.of(
        List.of(
            new Point(0, 0),
            new Point(w, 0),
            new Point(w, y),
            new Point(x, y),
            new Point(x, h),
            new Point(0, h)));
  }

  private Outline withObjects(Kind kind) {
    double w = feet(12, 32);
    double h = feet(10, 28);
    switch (kind) {
      case POST -> post(between(0, w), between(0, h));
      case EDGE_POST -> post(between(30, w - 30), between(-4, 40));
      case CORNER_POST -> post(between(0, 40), between(0, 40));
      case TWO_POSTS -> {
        double x = between(20, w - 20);
        double y = between(20, h - 20);
        post(x, y);
        post(x + feet(0.8, 4), y + feet(-2, 2));
      }
      case COLUMN_GRID -> {
        double inset = feet(1, 4);
        int across = 2 + random.nextInt(2);
        for (int i = 0; i < across; i++) {
          for (int k = 0; k < 2; k++) {
            double x = inset + (w - 2 * inset) * i / (across - 1);
            box(x, inset + (h - 2 * inset) * k, 8 + random.nextInt(8), 10, 0);
          }
        }
      }
      case DRAIN -> box(between(24, w - 24), between(24, h - 24), feet(0.5, 2), feet(0.5, 2), 0);
      case LONG_DRAIN -> {
        double turn = random.nextInt(3) == 0 ? degrees(0, 90) : Math.PI / 2 * random.nextInt(2);
        box(between(60, w - 60), between(50, h - 50), feet(4, 9), feet(0.4, 1), turn);
      }
      default -> box(between(24, w - 24), between(24, h - 24), 18, 18, degrees(5, 85));
    }
    return rectangle(w, h);
  }

  private void post(double x, double y) {
    FixedShape shape =
        new FixedShape.Round(new Point(x, y), Length.inches(4 + random.nextInt(10)), Kept.NOTHING);
    objects.add(object(FixedKind.POST, shape));
  }

  private void box(double x, double y, double long1, double short1, double turn) {
    Point c = new Point(x, y);
    Point u = polar(long1 / 2, turn);
    Point v = polar(short1 / 2, turn + Math.PI / 2);
    Outline ring =
        Outline.of(
            List.of(
                c.minus(u).minus(v), c.plus(u).minus(v), c.plus(u).plus(v), c.minus(u).plus(v)));
    objects.add(object(FixedKind.COLUMN, new FixedShape.Outlined(ring, Kept.NOTHING)));
  }

  private FixedObject object(FixedKind kind, FixedShape shape) {
    return new FixedObject("f" + (objects.size() + 1), "slab", kind, shape, Kept.NOTHING);
  }
}
