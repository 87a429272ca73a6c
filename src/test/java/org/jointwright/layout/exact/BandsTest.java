package org.jointwright.layout.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.jointwright.layout.piece.Limits;
import org.jointwright.shape.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The cheapest cover against every cover there is, laid out one by one and measured on a grid. */
class BandsTest {
  private static final double INCHES = 12;

  /** Wide limits, so that almost any rectangle may be a panel. */
  private static final Limits LIMITS = new Limits(22 * INCHES, 2.6, 2 * INCHES);

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void cheapestIsWhatTryingAllFinds(long seed) {
    Mesh mesh = any(new Random(seed));
    List<Tile> tiles = mesh.tiles(List.of());
    Trial trial = new Trial(mesh, tiles);
    trial.fill();
    Bands.Cheapest found =
        new Bands(mesh, tiles, new Tries(10_000, () -> true)).find(Double.POSITIVE_INFINITY);
    assertThat(found.known()).as("seed %s", seed).isCloseTo(trial.best, within(0.002 * trial.best));
    assertThat(found.bound()).as("seed %s", seed).isLessThanOrEqualTo(trial.best + 1e-6);
    assertThat(trial.covers).as("seed %s", seed).isGreaterThan(5);
  }

  /** A slab of three by three fields of any sizes, one corner field taken out or none. */
  private static Mesh any(Random random) {
    List<Double> xs = lines(random);
    List<Double> ys = lines(random);
    double right = xs.getLast();
    double top = ys.getLast();
    List<Point> ring =
        random.nextBoolean()
            ? List.of(at(0, 0), at(right, 0), at(right, top), at(0, top))
            : List.of(
                at(0, 0),
                at(right, 0),
                at(right, ys.get(2)),
                at(xs.get(2), ys.get(2)),
                at(xs.get(2), top),
                at(0, top));
    return new Mesh(new Frame(at(1, 0), List.of(ring)), LIMITS, xs, ys);
  }

  private static List<Double> lines(Random random) {
    List<Double> at = new ArrayList<>(List.of(0.0));
    for (int k = 0; k < 3; k++) {
      at.add(at.getLast() + INCHES * (4 + random.nextInt(7)));
    }
    return at;
  }

  private static Point at(double x, double y) {
    return new Point(x, y);
  }

  /** Every cover, each cell's panel written into a field. */
  private static final class Trial {
    private final Mesh mesh;
    private final List<Tile> tiles;
    private final int[][] panel = new int[3][3];
    private final List<Double> areas = new ArrayList<>();
    private double best = Double.POSITIVE_INFINITY;
    private int covers;

    Trial(Mesh mesh, List<Tile> tiles) {
      this.mesh = mesh;
      this.tiles = tiles;
      for (int[] column : panel) {
        Arrays.fill(column, -1);
      }
    }

    void fill() {
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          if (mesh.holds(i, j) && panel[i][j] < 0) {
            for (Tile t : tiles) {
              if (t.left() == i && t.low() == j && isBare(t)) {
                areas.add(t.area());
                set(t, areas.size());
                fill();
                set(t, -1);
                areas.removeLast();
              }
            }
            return;
          }
        }
      }
      covers++;
      best = Math.min(best, cost());
    }

    private boolean isBare(Tile t) {
      for (int i = t.left(); i < t.right(); i++) {
        for (int j = t.low(); j < t.high(); j++) {
          if (panel[i][j] >= 0) {
            return false;
          }
        }
      }
      return true;
    }

    private void set(Tile t, int value) {
      for (int i = t.left(); i < t.right(); i++) {
        for (int j = t.low(); j < t.high(); j++) {
          panel[i][j] = value;
        }
      }
    }

    /** Whether a joint runs between two cells. */
    private boolean joint(int i, int j, int k, int l) {
      return mesh.holds(i, j) && mesh.holds(k, l) && panel[i][j] != panel[k][l];
    }

    /**
     * The rules' cost from the fields alone: joints between unlike cells, tees where three meet.
     */
    private double cost() {
      double feet = 0;
      int tees = 0;
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          feet += joint(i, j, i + 1, j) ? gap(mesh.ys(), j) : 0;
          feet += joint(i, j, i, j + 1) ? gap(mesh.xs(), i) : 0;
          boolean inside = mesh.holds(i, j) && mesh.holds(i + 1, j + 1);
          if (inside && mesh.holds(i + 1, j) && mesh.holds(i, j + 1)) {
            int arms =
                (joint(i, j, i + 1, j) ? 1 : 0)
                    + (joint(i, j + 1, i + 1, j + 1) ? 1 : 0)
                    + (joint(i, j, i, j + 1) ? 1 : 0)
                    + (joint(i + 1, j, i + 1, j + 1) ? 1 : 0);
            tees += arms == 3 ? 1 : 0;
          }
        }
      }
      double mean = areas.stream().mapToDouble(a -> a).average().orElseThrow();
      double spread =
          Math.sqrt(
              areas.stream().mapToDouble(a -> (a - mean) * (a - mean)).average().orElseThrow());
      return feet + 8 * tees + 0.25 * feet * Math.max(0, spread / mean - 0.10);
    }

    private static double gap(List<Double> at, int i) {
      return (at.get(i + 1) - at.get(i)) / INCHES;
    }
  }
}
