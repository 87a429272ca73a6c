package org.jointwright.layout;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.plan.Outline;
import org.jointwright.shape.Point;

/** Outlines of straight edges, counter-clockwise, of sizes that a crew pours. */
final class StraightOutlines {
  private final Drawn drawn;

  StraightOutlines(Drawn drawn) {
    this.drawn = drawn;
  }

  /** The outline through x, y, x, y ... inches. */
  static Outline of(double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return Outline.of(points);
  }

  static Outline rectangle(double x, double y, double w, double h) {
    return of(x, y, x + w, y, x + w, y + h, x, y + h);
  }

  Outline rectangle() {
    return rectangle(0, 0, drawn.feet(6, 40), drawn.feet(6, 48));
  }

  Outline l() {
    double w = drawn.feet(12, 40);
    double h = drawn.feet(12, 40);
    double x = drawn.inches(48, w - 36);
    double y = drawn.inches(48, h - 36);
    return of(0, 0, w, 0, w, y, x, y, x, h, 0, h);
  }

  Outline t() {
    double w = drawn.feet(14, 40);
    double bar = drawn.feet(4, 16);
    double stem = drawn.inches(48, w - 72);
    double from = drawn.inches(36, w - stem - 36);
    double h = bar + drawn.feet(4, 26);
    double low = h - bar;
    return of(from, 0, from + stem, 0, from + stem, low, w, low, w, h, 0, h, 0, low, from, low);
  }

  Outline u() {
    double w = drawn.feet(16, 42);
    double left = drawn.inches(42, w / 2 - 30);
    double right = drawn.inches(42, w / 2 - 30);
    double base = drawn.feet(4, 14);
    double one = base + drawn.feet(3, 22);
    double two = drawn.onceIn(2) ? one : base + drawn.feet(3, 22);
    return of(0, 0, w, 0, w, one, w - right, one, w - right, base, left, base, left, two, 0, two);
  }

  Outline z() {
    double one = drawn.feet(8, 22);
    double from = drawn.inches(36, one - 48);
    double w = one + drawn.feet(3, 16);
    double h = drawn.feet(12, 38);
    double right = drawn.inches(48, h - 48);
    double left = drawn.onceIn(3) ? right : drawn.inches(48, h - 48);
    return of(0, 0, one, 0, one, right, w, right, w, h, from, h, from, left, 0, left);
  }

  Outline plus() {
    double w = drawn.feet(16, 36);
    double h = drawn.feet(16, 36);
    boolean even = drawn.onceIn(2);
    double a = drawn.inches(36, w / 2 - 36);
    double b = even ? a : drawn.inches(36, w / 2 - 36);
    double c = drawn.inches(36, h / 2 - 36);
    double d = even ? c : drawn.inches(36, h / 2 - 36);
    return of(
        a, 0, w - b, 0, w - b, c, w, c, w, h - d, w - b, h - d, w - b, h, a, h, a, h - d, 0, h - d,
        0, c, a, c);
  }

  Outline steps() {
    int steps = drawn.count(2, 4);
    double first = drawn.feet(4, 14);
    double low = drawn.feet(4, 14);
    double[] across = new double[steps];
    double[] up = new double[steps];
    double w = first;
    double h = low;
    for (int i = 0; i < steps; i++) {
      across[i] = drawn.feet(2, 8);
      up[i] = drawn.feet(2, 8);
      w += across[i];
      h += up[i];
    }
    List<Point> points = new ArrayList<>();
    points.add(new Point(0, 0));
    points.add(new Point(w, 0));
    double x = w;
    double y = low;
    for (int i = 0; i < steps; i++) {
      points.add(new Point(x, y));
      x -= across[i];
      points.add(new Point(x, y));
      y += up[i];
    }
    points.add(new Point(x, h));
    points.add(new Point(0, h));
    return Outline.of(points);
  }

  Outline trapezoid() {
    double low = drawn.feet(14, 36);
    double high = drawn.inches(72, low - 24);
    double h = drawn.feet(8, 36);
    double from = drawn.onceIn(2) ? (low - high) / 2 : drawn.inches(0, low - high);
    return of(0, 0, low, 0, from + high, h, from, h);
  }

  Outline skew() {
    double w = drawn.feet(8, 32);
    double h = drawn.feet(8, 36);
    double lean = h / Math.tan(drawn.degrees(62, 88));
    return of(0, 0, w, 0, w + lean, h, lean, h);
  }

  Outline triangle() {
    if (drawn.onceIn(2)) {
      return of(0, 0, drawn.feet(10, 30), 0, 0, drawn.feet(10, 30));
    }
    double w = drawn.feet(12, 32);
    double left = drawn.degrees(36, 80);
    double right = drawn.degrees(36, 80);
    double h = w / (1 / Math.tan(left) + 1 / Math.tan(right));
    return of(0, 0, w, 0, h / Math.tan(left), h);
  }

  /** A lot with one sharp corner, its far side square to the near one or not. */
  Outline acuteLot() {
    double sharp = drawn.degrees(36, 72);
    double h = drawn.feet(10, 30);
    double near = h / Math.tan(sharp);
    double top = drawn.feet(6, 24);
    double far = near + top;
    return of(0, 0, far + (drawn.onceIn(2) ? drawn.feet(-2, 4) : 0), 0, far, h, near, h);
  }

  /** A drive that widens to the street by straight flares. */
  Outline flare() {
    double w = drawn.feet(9, 22);
    double f = drawn.feet(1.5, 5);
    double deep = drawn.feet(2.5, 7);
    double long1 = deep + (drawn.onceIn(3) ? drawn.feet(1, 4) : drawn.feet(5, 40));
    return of(0, 0, w + 2 * f, 0, w + f, deep, w + f, long1, f, long1, f, deep);
  }

  /** A narrow drive that widens to the garage, by a slanted side or by two. */
  Outline widen() {
    double neck = drawn.feet(9, 14);
    double garage = drawn.feet(18, 32);
    double low = drawn.feet(8, 30);
    double high = low + (garage - neck) / Math.tan(drawn.degrees(25, 65));
    double top = high + drawn.feet(8, 30);
    if (drawn.onceIn(2)) {
      return of(0, 0, neck, 0, neck, low, garage, high, garage, top, 0, top);
    }
    double in = (garage - neck) / 2;
    double mid = low + (high - low) / 2;
    return of(
        in, 0, in + neck, 0, in + neck, low, garage, mid, garage, top, 0, top, 0, mid, in, low);
  }

  /** A drive with a bay beside it whose ends are slanted. */
  Outline bay() {
    double drive = drawn.feet(9, 14);
    double wide = drive + drawn.feet(6, 12);
    double low = drawn.feet(8, 20);
    double run = (wide - drive) / Math.tan(drawn.degrees(30, 60));
    double high = low + 2 * run + drawn.feet(9, 22);
    double top = high + drawn.feet(6, 20);
    return of(
        0,
        0,
        drive,
        0,
        drive,
        low,
        wide,
        low + run,
        wide,
        high - run,
        drive,
        high,
        drive,
        top,
        0,
        top);
  }

  /** A rectangle with a step of a quarter of an inch to three feet in a side. */
  Outline jog() {
    double w = drawn.feet(10, 36);
    double h = drawn.feet(12, 44);
    double step = drawn.onceIn(2) ? drawn.loose(0.25, 6) : drawn.inches(6, 36);
    double at = drawn.inches(24, h - 24);
    return drawn.onceIn(2)
        ? of(0, 0, w, 0, w, at, w - step, at, w - step, h, 0, h)
        : of(0, 0, w, 0, w, at, w + step, at, w + step, h, 0, h);
  }

  /** A rectangle with points along its sides that are in line with the corners, or nearly. */
  Outline nearCollinear() {
    double w = drawn.feet(10, 36);
    double h = drawn.feet(10, 40);
    double x = drawn.inches(12, w - 12);
    double y = drawn.inches(12, h - 12);
    double off = drawn.onceIn(3) ? 0 : drawn.loose(-0.5, 0.5);
    return of(0, 0, x, off, w, 0, w + drawn.loose(-0.4, 0.4), y, w, h, x / 2, h, 0, h);
  }

  Outline strip() {
    return rectangle(0, 0, drawn.feet(10, 60), drawn.inches(16, 60));
  }

  /** A walk of one width along a line with one bend or two. */
  Outline bentWalk() {
    double half = drawn.inches(18, 40);
    int bends = drawn.count(1, 2);
    List<Point> middle = new ArrayList<>();
    Point at = new Point(0, 0);
    double way = 0;
    middle.add(at);
    for (int i = 0; i <= bends; i++) {
      at = at.plus(new Point(1, 0).turned(way).times(drawn.feet(9, 28)));
      middle.add(at);
      boolean square = drawn.onceIn(2);
      way += (square ? Math.PI / 2 : drawn.degrees(12, 80)) * (drawn.onceIn(2) ? 1 : -1);
    }
    return widened(middle, half);
  }

  /** Both sides of a line, {@code half} from it, mitred at its bends. */
  private static Outline widened(List<Point> middle, double half) {
    List<Point> right = new ArrayList<>();
    List<Point> left = new ArrayList<>();
    for (int i = 0; i < middle.size(); i++) {
      Point in = middle.get(Math.max(i, 1)).minus(middle.get(Math.max(i, 1) - 1)).unit();
      int next = Math.min(i + 1, middle.size() - 1);
      Point out = middle.get(next).minus(middle.get(next - 1)).unit();
      Point side = in.plus(out).unit().left();
      Point off = side.times(half / side.dot(in.left()));
      right.add(middle.get(i).minus(off));
      left.add(middle.get(i).plus(off));
    }
    right.addAll(left.reversed());
    return Outline.of(right);
  }

  /** A rectangle whose corners were set an inch or several off. */
  Outline outOfSquare() {
    double w = drawn.feet(9, 36);
    double h = drawn.feet(9, 40);
    double off = drawn.loose(0.5, 9);
    return of(
        0,
        0,
        w + drawn.loose(-off, off),
        drawn.loose(-off, off),
        w + drawn.loose(-off, off),
        h + drawn.loose(-off, off),
        drawn.loose(-off, off),
        h + drawn.loose(-off, off));
  }
}
