package org.jointwright.sheet.readback;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.shape.Point;
import org.jointwright.sheet.readback.Reading.Bow;
import org.jointwright.sheet.readback.Reading.Side;
import org.jointwright.sheet.readback.Reading.Tie;

/**
 * Corners from the printed sides and diagonals, by least squares (Gauss-Newton, damped), begun from
 * where the letters stand on the page. Written apart from the sheet's own reckoning.
 */
final class Net {
  private record Pull(int from, int to, double length) {}

  /** A corner that stands so far to the left of the string between two others. */
  private record InLine(int from, int on, int to, double left) {}

  private final List<InLine> inLine = new ArrayList<>();

  private final List<String> names;
  private final List<Pull> pulls = new ArrayList<>();
  private final double[] at;

  private Net(Reading reading) {
    names = List.copyOf(reading.letters().keySet());
    at = new double[2 * names.size()];
    for (int i = 0; i < names.size(); i++) {
      Point p = reading.letters().get(names.get(i));
      at[2 * i] = p.x() * reading.scale() / 25.4;
      at[2 * i + 1] = -p.y() * reading.scale() / 25.4;
    }
    for (Map.Entry<String, Side> e : reading.sides().entrySet()) {
      Side s = e.getValue();
      Bow bow = reading.arcs().get(e.getKey());
      pull(s.from(), s.to(), bow == null ? s.length() : bow.chord());
      if (bow == null) {
        s.corners()
            .forEach(
                (letter, along) -> {
                  pull(s.from(), letter, along);
                  pull(letter, s.to(), s.length() - along);
                  inLine.add(
                      new InLine(
                          names.indexOf(s.from()),
                          names.indexOf(letter),
                          names.indexOf(s.to()),
                          0));
                });
      }
    }
    for (Tie t : reading.ties()) {
      pull(t.from(), t.to(), t.length());
    }
    for (Reading.Bend b : reading.bends()) {
      if (!b.corner().isEmpty()) {
        String[] ends = b.off().side().split("–", -1);
        int from = names.indexOf(ends[0]);
        int on = names.indexOf(b.corner());
        inLine.add(new InLine(from, on, names.indexOf(ends[1]), b.off().left()));
        pull(ends[0], b.corner(), Math.hypot(b.off().along(), b.off().left()));
      }
    }
  }

  private void pull(String from, String to, double length) {
    int a = names.indexOf(from);
    int b = names.indexOf(to);
    if (a < 0 || b < 0) {
      throw new AssertionError("no letter on the plan for " + from + " or " + to);
    }
    pulls.add(new Pull(a, b, length));
  }

  /** The corners by letter, inches; turned and moved at will. */
  static Map<String, Point> corners(Reading reading) {
    Net net = new Net(reading);
    for (int round = 0; round < 200; round++) {
      if (net.step(round < 100 ? 1e-3 : 1e-9) < 1e-9) {
        break;
      }
    }
    Map<String, Point> corners = new LinkedHashMap<>();
    for (int i = 0; i < net.names.size(); i++) {
      corners.put(net.names.get(i), new Point(net.at[2 * i], net.at[2 * i + 1]));
    }
    return corners;
  }

  /** How far the worst pull is from what was printed, inches. */
  static double misfit(Reading reading, Map<String, Point> corners) {
    Net net = new Net(reading);
    double worst = 0;
    for (Pull p : net.pulls) {
      double d = corners.get(net.names.get(p.from())).distance(corners.get(net.names.get(p.to())));
      worst = Math.max(worst, Math.abs(d - p.length()));
    }
    return worst;
  }

  private double step(double damping) {
    int n = at.length;
    double[][] m = new double[n][n + 1];
    for (int i = 0; i < n; i++) {
      m[i][i] = damping;
    }
    for (Pull p : pulls) {
      double dx = at[2 * p.to()] - at[2 * p.from()];
      double dy = at[2 * p.to() + 1] - at[2 * p.from() + 1];
      double d = Math.max(1e-9, Math.hypot(dx, dy));
      int[] index = {2 * p.from(), 2 * p.from() + 1, 2 * p.to(), 2 * p.to() + 1};
      double[] a = {-dx / d, -dy / d, dx / d, dy / d};
      for (int i = 0; i < 4; i++) {
        for (int k = 0; k < 4; k++) {
          m[index[i]][index[k]] += a[i] * a[k];
        }
        m[index[i]][n] += a[i] * (p.length() - d);
      }
    }
    inLine.forEach(l -> add(l, m));
    double[] x = solve(m);
    double moved = 0;
    for (int i = 0; i < n; i++) {
      at[i] += x[i];
      moved = Math.max(moved, Math.abs(x[i]));
    }
    return moved;
  }

  private void add(InLine l, double[][] m) {
    double dx = at[2 * l.to()] - at[2 * l.from()];
    double dy = at[2 * l.to() + 1] - at[2 * l.from() + 1];
    double d = Math.max(1e-9, Math.hypot(dx, dy));
    double px = at[2 * l.on()] - at[2 * l.from()];
    double py = at[2 * l.on() + 1] - at[2 * l.from() + 1];
    double share = (px * dx + py * dy) / (d * d);
    double off = (dx * py - dy * px) / d - l.left();
    int[] index = {2 * l.from(), 2 * l.on(), 2 * l.to()};
    double[] factor = {share - 1, 1, -share};
    double[] across = {-dy / d, dx / d};
    for (int i = 0; i < 6; i++) {
      double a = factor[i / 2] * across[i % 2];
      for (int k = 0; k < 6; k++) {
        m[index[i / 2] + i % 2][index[k / 2] + k % 2] += a * factor[k / 2] * across[k % 2];
      }
      m[index[i / 2] + i % 2][at.length] -= a * off;
    }
  }

  private static double[] solve(double[][] m) {
    int n = m.length;
    for (int c = 0; c < n; c++) {
      int best = c;
      for (int r = c + 1; r < n; r++) {
        best = Math.abs(m[r][c]) > Math.abs(m[best][c]) ? r : best;
      }
      double[] swap = m[c];
      m[c] = m[best];
      m[best] = swap;
      for (int r = c + 1; r < n; r++) {
        double f = m[r][c] / m[c][c];
        for (int k = c; k <= n && f != 0; k++) {
          m[r][k] -= f * m[c][k];
        }
      }
    }
    double[] x = new double[n];
    for (int r = n - 1; r >= 0; r--) {
      double sum = m[r][n];
      for (int k = r + 1; k < n; k++) {
        sum -= m[r][k] * x[k];
      }
      x[r] = sum / m[r][r];
    }
    return x;
  }
}
