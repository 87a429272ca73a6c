package org.jointwright.proof.build;

/** The little linear algebra that a net of tapes asks for. */
final class Matrix {
  private Matrix() {}

  /**
   * The inverse of a square matrix, by elimination with pivots.
   *
   * @throws ArithmeticException when there is none
   */
  static double[][] inverse(double[][] square) {
    int n = square.length;
    double[][] m = new double[n][2 * n];
    for (int r = 0; r < n; r++) {
      System.arraycopy(square[r], 0, m[r], 0, n);
      m[r][n + r] = 1;
    }
    for (int c = 0; c < n; c++) {
      int best = c;
      for (int r = c + 1; r < n; r++) {
        best = Math.abs(m[r][c]) > Math.abs(m[best][c]) ? r : best;
      }
      double[] swap = m[c];
      m[c] = m[best];
      m[best] = swap;
      double pivot = m[c][c];
      if (!(Math.abs(pivot) > 0)) {
        throw new ArithmeticException("the matrix has no inverse");
      }
      for (int k = c; k < 2 * n; k++) {
        m[c][k] /= pivot;
      }
      eliminate(m, c);
    }
    double[][] out = new double[n][n];
    for (int r = 0; r < n; r++) {
      System.arraycopy(m[r], n, out[r], 0, n);
    }
    return out;
  }

  private static void eliminate(double[][] m, int c) {
    for (int r = 0; r < m.length; r++) {
      double f = m[r][c];
      if (r != c && f != 0) {
        for (int k = c; k < m[r].length; k++) {
          m[r][k] -= f * m[c][k];
        }
      }
    }
  }

  /**
   * What a square matrix makes a column of, by elimination with pivots; the matrix is used up.
   *
   * @throws ArithmeticException when there is none
   */
  static double[] solve(double[][] m, double[] column) {
    int n = m.length;
    double[] x = column.clone();
    for (int c = 0; c < n; c++) {
      int best = c;
      for (int r = c + 1; r < n; r++) {
        best = Math.abs(m[r][c]) > Math.abs(m[best][c]) ? r : best;
      }
      double[] swap = m[c];
      m[c] = m[best];
      m[best] = swap;
      double moved = x[c];
      x[c] = x[best];
      x[best] = moved;
      if (!(Math.abs(m[c][c]) > 0)) {
        throw new ArithmeticException("the matrix has no inverse");
      }
      for (int r = c + 1; r < n; r++) {
        double f = m[r][c] / m[c][c];
        for (int k = c; f != 0 && k < n; k++) {
          m[r][k] -= f * m[c][k];
        }
        x[r] -= f * x[c];
      }
    }
    for (int r = n - 1; r >= 0; r--) {
      for (int k = r + 1; k < n; k++) {
        x[r] -= m[r][k] * x[k];
      }
      x[r] /= m[r][r];
    }
    return x;
  }

  /** The product of a matrix and a column. */
  static double[] times(double[][] m, double[] column) {
    double[] out = new double[m.length];
    for (int r = 0; r < m.length; r++) {
      double sum = 0;
      for (int k = 0; k < column.length; k++) {
        sum += m[r][k] * column[k];
      }
      out[r] = sum;
    }
    return out;
  }
}
