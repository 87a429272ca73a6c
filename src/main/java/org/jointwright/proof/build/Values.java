package org.jointwright.proof.build;

import java.util.List;
import org.jointwright.proof.read.Figure;

/** The figures of a sheet as lengths, with one of them moved where that is asked for. */
final class Values {
  private final double[] inches;

  private Values(double[] inches) {
    this.inches = inches;
  }

  static Values of(List<Figure> figures) {
    return new Values(figures.stream().mapToDouble(Figure::inches).toArray());
  }

  /** The length of a figure, inches. */
  double of(Figure figure) {
    return inches[figure.index()];
  }

  /** The same, one figure longer by so many inches. */
  Values moved(Figure figure, double by) {
    double[] other = inches.clone();
    other[figure.index()] += by;
    return new Values(other);
  }
}
