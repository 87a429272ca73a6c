package org.jointwright.sheet;

import java.util.Arrays;
import java.util.List;
import org.jointwright.shape.Point;

/**
 * How well a set of taped distances holds points in place: the covariance of a least-squares
 * adjustment of a trilateration net, brought up to date figure by figure (a rank-one update; the
 * usual theory of adjustment, from memory). Points are known but not trusted at first; the first
 * point and the direction to the second are held.
 */
final class Certainty {
  /** How little is known of a point before anything is taped; square inches. */
  private static final double UNKNOWN = 1e5;

  private final List<Point> points;
  private final double[][] covariance;

  /** How far the figures that are told put each coordinate off where it is; inches. */
  private final double[] drift;

  Certainty(List<Point> points) {
    this.points = points;
    int n = 2 * points.size();
    covariance = new double[n][n];
    drift = new double[n];
    for (int i = 0; i < n; i++) {
      covariance[i][i] = i < 2 ? 1e-4 : UNKNOWN;
    }
    if (points.size() > 1) {
      Point u = direction(0, 1).left();
      double[] hold = new double[n];
      hold[2] = u.x();
      hold[3] = u.y();
      update(hold, 1e-4, 0);
    }
  }

  private Certainty(Certainty other) {
    points = other.points;
    covariance = Arrays.stream(other.covariance).map(double[]::clone).toArray(double[][]::new);
    drift = other.drift.clone();
  }

  /** The same, to be tried on. */
  Certainty copy() {
    return new Certainty(this);
  }

  private Point direction(int i, int k) {
    Point d = points.get(k).minus(points.get(i));
    return d.norm() == 0 ? new Point(1, 0) : d.unit();
  }

  private double[] row(int i, int k) {
    double[] a = new double[covariance.length];
    Point u = direction(i, k);
    a[2 * i] -= u.x();
    a[2 * i + 1] -= u.y();
    a[2 * k] += u.x();
    a[2 * k + 1] += u.y();
    return a;
  }

  /**
   * A taped distance between two points, good to the rounding of the sheet.
   *
   * @param told what the sheet says it is, inches
   */
  void distance(int i, int k, double told) {
    double off = told - points.get(i).distance(points.get(k));
    update(row(i, k), Ties.ROUNDING * Ties.ROUNDING, off);
  }

  /** Point {@code k} stands on the string from {@code i} to {@code j}. */
  void inLine(int i, int k, int j) {
    Point across = direction(i, j).left();
    update(off(i, k, j, across), Ties.ROUNDING * Ties.ROUNDING / 4, 0);
  }

  /**
   * Point {@code k} is told by going along the string from {@code i} to {@code j} and square off
   * it.
   *
   * @param along how far the sheet says that it is along, inches
   * @param left how far the sheet says that it is off to the left, inches
   */
  void offset(int i, int k, int j, double along, double left) {
    Point u = direction(i, j);
    Point v = points.get(k).minus(points.get(i));
    double[] a = new double[covariance.length];
    add(a, i, u, -1);
    add(a, k, u, 1);
    update(a, Ties.ROUNDING * Ties.ROUNDING, along - u.dot(v));
    update(off(i, k, j, u.left()), Ties.ROUNDING * Ties.ROUNDING, left - u.cross(v));
  }

  /** How far across its direction point {@code k} moves off the string from i to j. */
  private double[] off(int i, int k, int j, Point across) {
    double whole = points.get(i).distance(points.get(j));
    double along = direction(i, j).dot(points.get(k).minus(points.get(i)));
    double share = whole == 0 ? 0 : along / whole;
    double[] a = new double[covariance.length];
    add(a, i, across, share - 1);
    add(a, k, across, 1);
    add(a, j, across, -share);
    return a;
  }

  /**
   * How far off its place each point is found by who tapes as the sheet says and makes no mistake:
   * what the rounding of the figures does. The whole is laid where it fits best; inches.
   */
  double[] adrift() {
    int n = points.size();
    double x = 0;
    double y = 0;
    Point by = new Point(0, 0);
    for (int i = 0; i < n; i++) {
      x += points.get(i).x() / n;
      y += points.get(i).y() / n;
      by = by.plus(new Point(drift[2 * i] / n, drift[2 * i + 1] / n));
    }
    Point middle = new Point(x, y);
    double turned = 0;
    double size = 0;
    for (int i = 0; i < n; i++) {
      Point arm = points.get(i).minus(middle);
      turned += arm.cross(moved(i).minus(by));
      size += arm.dot(arm);
    }
    double turn = size == 0 ? 0 : turned / size;
    double[] off = new double[n];
    for (int i = 0; i < n; i++) {
      Point arm = points.get(i).minus(middle);
      off[i] = moved(i).minus(by).minus(arm.left().times(turn)).norm();
    }
    return off;
  }

  private Point moved(int i) {
    return new Point(drift[2 * i], drift[2 * i + 1]);
  }

  private static void add(double[] a, int i, Point u, double factor) {
    a[2 * i] += u.x() * factor;
    a[2 * i + 1] += u.y() * factor;
  }

  /** How much of all doubt a distance would take away, square inches. */
  double gain(int i, int k) {
    double[] a = row(i, k);
    double[] ca = times(a);
    double sum = 0;
    for (double c : ca) {
      sum += c * c;
    }
    return sum / (Ties.ROUNDING * Ties.ROUNDING + dot(a, ca));
  }

  /** The doubt of the point that is held worst, inches. */
  double worst() {
    double worst = 0;
    for (int i = 0; i < covariance.length; i += 2) {
      worst = Math.max(worst, covariance[i][i] + covariance[i + 1][i + 1]);
    }
    return Math.sqrt(worst / 2);
  }

  /** The doubt of one point, inches. */
  double of(int i) {
    return Math.sqrt((covariance[2 * i][2 * i] + covariance[2 * i + 1][2 * i + 1]) / 2);
  }

  private void update(double[] a, double variance, double said) {
    double[] ca = times(a);
    double s = variance + dot(a, ca);
    double news = (said - dot(a, drift)) / s;
    for (int i = 0; i < ca.length; i++) {
      if (ca[i] == 0) {
        continue;
      }
      drift[i] += ca[i] * news;
      for (int k = 0; k < ca.length; k++) {
        covariance[i][k] -= ca[i] * ca[k] / s;
      }
    }
  }

  private double[] times(double[] a) {
    double[] out = new double[a.length];
    for (int k = 0; k < a.length; k++) {
      if (a[k] != 0) {
        for (int i = 0; i < a.length; i++) {
          out[i] += covariance[i][k] * a[k];
        }
      }
    }
    return out;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
