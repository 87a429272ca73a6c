package org.jointwright.wild;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;

/** Outlines and openings of wild slabs, the same for the same chance. */
final class WildOutlines {
  private final SplittableRandom random;

  WildOutlines(SplittableRandom random) {
    this.random = random;
  }

  /** The outline first, then the openings. */
  List<Outline> rings(WildKind kind) {
    return switch (kind) {
      case JOGS -> List.of(Outline.of(jogs()));
      case NEAR_TOUCH -> List.of(nearTouch());
      case NECK -> List.of(neck());
      case ARCS -> List.of(star(count(4, 14), 60, 400, 0.3));
      case LENS -> List.of(lens());
      case SHALLOW -> List.of(shallow());
      case CHORDS -> List.of(chords());
      case STAR -> List.of(star(count(3, 20), 20, 500, 0));
      case HOLES -> holes();
      case ROUND_HOLES -> roundHoles();
      case COMB -> List.of(comb());
      case ZIGZAG -> List.of(zigzag());
      case TINY -> List.of(star(count(3, 6), 4, 14, onceIn(3) ? 0.2 : 0));
      case HUGE -> List.of(star(count(4, 9), 3000, 6500, onceIn(3) ? 0.1 : 0));
      case SCRIBBLE -> List.of(scribble());
    };
  }

  private double between(double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  private int count(int from, int to) {
    return from + random.nextInt(to - from + 1);
  }

  private boolean onceIn(int times) {
    return random.nextInt(times) == 0;
  }

  /** A gap that is mostly next to nothing, inches. */
  private double hair(double most) {
    return most * Math.pow(10, -between(0, 2.5));
  }

  private static Outline rectangle(double x, double y, double w, double h) {
    return Outline.of(
        List.of(
            new Point(x, y), new Point(x + w, y), new Point(x + w, y + h), new Point(x, y + h)));
  }

  private List<Point> jogs() {
    double w = between(60, 500);
    double h = between(60, 500);
    List<Point> points = new ArrayList<>();
    side(points, new Point(0, 0), new Point(1, 0), w);
    side(points, new Point(w, 0), new Point(0, 1), h);
    side(points, new Point(w, h), new Point(-1, 0), w);
    side(points, new Point(0, h), new Point(0, -1), h);
    return points;
  }

  /** A side from a corner, with steps aside that come back before its end. */
  private void side(List<Point> points, Point from, Point way, double length) {
    points.add(from);
    double at = 12;
    for (int n = count(0, 5); n > 0; n--) {
      double start = at + hair(length / 4);
      double end = start + hair(length / 4);
      if (end > length - 12) {
        return;
      }
      Point aside = way.left().times(hair(11) * (onceIn(2) ? 1 : -1));
      points.add(from.plus(way.times(start)));
      points.add(from.plus(way.times(start)).plus(aside));
      points.add(from.plus(way.times(end)).plus(aside));
      points.add(from.plus(way.times(end)));
      at = end;
    }
  }

  private Outline nearTouch() {
    double w = between(100, 400);
    double h = between(80, 300);
    double x = between(30, w - 30);
    double gap = hair(6);
    if (onceIn(2)) {
      // A notch from above whose foot all but reaches the lower side.
      double half = between(2, 25);
      return Outline.of(
          List.of(
              new Point(0, 0),
              new Point(w, 0),
              new Point(w, h),
              new Point(x + half, h),
              new Point(x + (onceIn(2) ? half : 0), gap),
              new Point(x - half, h),
              new Point(0, h)));
    }
    // Two notches, their feet side by side.
    double y = between(0.3, 0.7) * h;
    return Outline.of(
        List.of(
            new Point(0, 0),
            new Point(x - 20, 0),
            new Point(x - gap / 2, y),
            new Point(x - gap / 2, 0),
            new Point(w + 20, 0),
            new Point(w + 20, h),
            new Point(x + 20, h),
            new Point(x + gap / 2, y),
            new Point(x + gap / 2 - between(0, 10), h),
            new Point(0, h)));
  }

  private Outline neck() {
    double w = between(50, 300);
    double h = between(50, 300);
    double thin = hair(30) + 0.1;
    double y = between(5, h - thin - 5);
    double l = between(1, 200);
    double w2 = between(50, 300);
    double below = between(5, 200);
    double above = between(5, 200);
    return Outline.of(
        List.of(
            new Point(0, 0),
            new Point(w, 0),
            new Point(w, y),
            new Point(w + l, y),
            new Point(w + l, y - below),
            new Point(w + l + w2, y - below),
            new Point(w + l + w2, y + thin + above),
            new Point(w + l, y + thin + above),
            new Point(w + l, y + thin),
            new Point(w, y + thin),
            new Point(w, h),
            new Point(0, h)));
  }

  /** Corners round a middle that sees them all; {@code bow} is the most that a side bows by. */
  private Outline star(int n, double near, double far, double bow) {
    List<Point> at = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * (i + between(0, 0.7)) / n;
      at.add(new Point(between(near, far), 0).turned(angle));
    }
    List<Vertex> vertices = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      boolean arc = bow > 0 && !onceIn(3);
      vertices.add(
          arc ? bowed(at.get(i), at.get((i + 1) % n), bow * between(-1, 1)) : Vertex.at(at.get(i)));
    }
    return new Outline(vertices);
  }

  /** A vertex whose leaving arc bows to the right by a share of its chord. */
  private static Vertex bowed(Point from, Point to, double share) {
    Point chord = to.minus(from);
    return Vertex.arc(from, from.plus(chord.times(0.5)).minus(chord.left().times(share)));
  }

  private Outline lens() {
    Point a = new Point(0, 0);
    Point b = new Point(between(60, 600), 0);
    double low = between(0.01, 0.5);
    double high = onceIn(2) ? between(0.01, 0.5) : -low + hair(0.3);
    return new Outline(List.of(bowed(a, b, low), bowed(b, a, high)));
  }

  private Outline shallow() {
    double w = between(60, 400);
    double h = between(60, 300);
    double flat = hair(0.4) * (onceIn(2) ? 1 : -1);
    Point right = new Point(w, h);
    Point middle = new Point(between(0.2, 0.8) * w, h + (onceIn(2) ? hair(3) : 0));
    return new Outline(
        List.of(
            Vertex.at(new Point(0, 0)),
            Vertex.at(new Point(w, 0)),
            onceIn(2) ? bowed(right, middle, flat) : Vertex.at(right),
            bowed(middle, new Point(0, h), flat),
            Vertex.at(new Point(0, h))));
  }

  private Outline chords() {
    int n = count(60, 600);
    double a = between(60, 300);
    double b = between(60, 300);
    double wave = between(0, 0.25);
    int waves = count(2, 9);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double t = 2 * Math.PI * i / n;
      double r = 1 + wave * Math.sin(waves * t);
      points.add(new Point(a * r * Math.cos(t), b * r * Math.sin(t)));
    }
    return Outline.of(points);
  }

  private List<Outline> holes() {
    double w = between(100, 400);
    double h = between(100, 400);
    List<Outline> rings = new ArrayList<>(List.of(rectangle(0, 0, w, h)));
    double x = 0.6 + hair(20);
    for (int n = count(1, 6); n > 0; n--) {
      double wide = between(2, 60);
      if (x + wide > w) {
        break;
      }
      double y = onceIn(2) ? 0.6 + hair(10) : between(1, h - 70);
      rings.add(rectangle(x, y, wide, between(2, Math.min(60, h - y - 0.6))));
      x += wide + 0.45 + hair(10);
    }
    return rings;
  }

  private List<Outline> roundHoles() {
    double r = between(100, 300);
    List<Outline> rings = new ArrayList<>(List.of(circle(0, 0, r)));
    double x = -r + 0.6 + hair(10);
    for (int n = count(1, 4); n > 0; n--) {
      double own = between(3, 50);
      if (x + 2 * own > r) {
        break;
      }
      rings.add(circle(x + own, 0, own));
      x += 2 * own + 0.45 + hair(6);
    }
    return rings;
  }

  private static Outline circle(double x, double y, double r) {
    return new Outline(
        List.of(
            Vertex.arc(new Point(x + r, y), new Point(x, y + r)),
            Vertex.arc(new Point(x - r, y), new Point(x, y - r))));
  }

  private Outline comb() {
    double back = between(6, 60);
    double x = 0;
    List<Point> points = new ArrayList<>(List.of(new Point(0, 0)));
    List<Point> teeth = new ArrayList<>();
    for (int n = count(2, 12); n > 0; n--) {
      double wide = hair(60) + 1;
      double high = between(1, 200);
      teeth.add(new Point(x, back));
      teeth.add(new Point(x, back + high));
      teeth.add(new Point(x + wide, back + high));
      teeth.add(new Point(x + wide, back));
      x += wide + hair(60) + 0.1;
    }
    points.add(new Point(x + 5, 0));
    points.add(new Point(x + 5, back));
    points.addAll(teeth.reversed());
    return Outline.of(points);
  }

  private Outline zigzag() {
    int n = count(2, 8);
    double step = between(30, 150);
    double wide = between(6, 60);
    List<Point> right = new ArrayList<>();
    List<Point> left = new ArrayList<>();
    for (int i = 0; i <= n; i++) {
      double y = i % 2 == 0 ? between(-20, 0) : between(20, 150);
      right.add(new Point(i * step, y));
      left.add(new Point(i * step + between(-1, 1), y + wide));
    }
    right.addAll(left.reversed());
    return Outline.of(right);
  }

  private Outline scribble() {
    List<Point> points = new ArrayList<>();
    for (int n = count(4, 8); n > 0; n--) {
      points.add(new Point(between(0, 300), between(0, 300)));
    }
    return Outline.of(points);
  }
}
