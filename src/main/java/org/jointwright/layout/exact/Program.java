package org.jointwright.layout.exact;

import java.util.Arrays;
import java.util.List;
import org.jointwright.practice.Cost;
import org.jspecify.annotations.Nullable;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * Covering a slab with tiles as a linear program: a share of each tile, each cell covered once,
 * tees counted from the corners of tiles that meet at a node.
 */
final class Program {
  private static final double TEE = Cost.TEE.value().inches() / 12;

  private final Mesh mesh;
  private final List<Tile> tiles;
  private final ExpressionsBasedModel model = new ExpressionsBasedModel();
  private final Variable[] shares;
  private final double constant;

  /** A program's answer. */
  sealed interface Answer {}

  /**
   * The cheapest shares of the tiles.
   *
   * @param cost ft
   * @param shares from 0 to 1, one for each tile
   */
  record Relaxed(double cost, List<Double> shares) implements Answer {
    /** Copies the list. */
    Relaxed {
      shares = List.copyOf(shares);
    }
  }

  /** No shares cover the slab as asked: proved. */
  record Impossible() implements Answer {}

  /** The solver gave up, which proves nothing. */
  record Unsettled() implements Answer {}

  /** That a tile must be whole, or may not be there. */
  record Held(int tile, boolean whole) {}

  /**
   * A program.
   *
   * @param ask what is asked of the tiles
   */
  Program(Mesh mesh, List<Tile> tiles, Ask ask) {
    this.mesh = mesh;
    this.tiles = tiles;
    this.shares = new Variable[tiles.size()];
    this.constant = -ask.weight() * mesh.frame().edge() / 2;
    // Each tile's edges are half of a joint, or of the slab's edge.
    for (int k = 0; k < shares.length; k++) {
      shares[k] =
          model
              .addVariable("t" + k)
              .lower(0)
              .upper(1)
              .weight(ask.weight() * tiles.get(k).halfRound());
    }
    cover();
    tees();
    Expression count = model.addExpression("count").lower(ask.fewest()).upper(ask.most());
    for (Variable v : shares) {
      count.set(v, 1);
    }
    if (Double.isFinite(ask.mostSquares())) {
      Expression squares = model.addExpression("squares").upper(ask.mostSquares());
      for (int k = 0; k < shares.length; k++) {
        squares.set(shares[k], tiles.get(k).area() * tiles.get(k).area());
      }
    }
  }

  private void cover() {
    Expression[][] cells = new Expression[mesh.xs().size() - 1][mesh.ys().size() - 1];
    for (int i = 0; i < cells.length; i++) {
      for (int j = 0; j < cells[i].length; j++) {
        if (mesh.holds(i, j)) {
          cells[i][j] = model.addExpression("c" + i + "," + j).level(1);
        }
      }
    }
    for (int k = 0; k < shares.length; k++) {
      Tile t = tiles.get(k);
      for (int i = t.left(); i < t.right(); i++) {
        for (int j = t.low(); j < t.high(); j++) {
          cells[i][j].set(shares[k], 1);
        }
      }
    }
  }

  /** At a tee two corners meet, side by side: each of the two diagonals has one of them. */
  private void tees() {
    int n = mesh.ys().size();
    @Nullable Expression[][] diagonals = new Expression[2][mesh.xs().size() * n];
    for (int i = 1; i < mesh.xs().size() - 1; i++) {
      for (int j = 1; j < n - 1; j++) {
        if (mesh.isInside(i, j)) {
          for (int d = 0; d < 2; d++) {
            Expression e = model.addExpression("d" + d + "," + i + "," + j).level(0);
            e.set(model.addVariable("p" + d + "," + i + "," + j).lower(0).weight(TEE / 2), 1);
            e.set(model.addVariable("m" + d + "," + i + "," + j).lower(0).weight(TEE / 2), -1);
            diagonals[d][i * n + j] = e;
          }
        }
      }
    }
    for (int k = 0; k < shares.length; k++) {
      Tile t = tiles.get(k);
      meet(diagonals[0][t.left() * n + t.low()], k, 1);
      meet(diagonals[0][t.right() * n + t.high()], k, -1);
      meet(diagonals[1][t.right() * n + t.low()], k, 1);
      meet(diagonals[1][t.left() * n + t.high()], k, -1);
    }
  }

  private void meet(@Nullable Expression diagonal, int k, double sign) {
    if (diagonal != null) {
      diagonal.set(shares[k], sign);
    }
  }

  /**
   * The cheapest shares.
   *
   * @param held the tiles that are taken or left out beforehand
   */
  Answer solve(List<Held> held) {
    // A copy each time: solving simplifies a model for good.
    ExpressionsBasedModel copy = model.copy();
    for (Held h : held) {
      copy.getVariable(shares[h.tile()].getIndex()).level(h.whole() ? 1 : 0);
    }
    Optimisation.Result result = copy.minimise();
    if (result.getState() == Optimisation.State.INFEASIBLE) {
      return new Impossible();
    }
    if (!result.getState().isOptimal()) {
      return new Unsettled();
    }
    Double[] x = new Double[shares.length];
    Arrays.setAll(x, result::doubleValue);
    return new Relaxed(result.getValue() + constant, List.of(x));
  }
}
