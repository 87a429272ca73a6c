package org.jointwright.proof.build;

import java.util.BitSet;
import java.util.List;
import org.jointwright.proof.read.Figure;

/**
 * The figures of a sheet as lengths, with one of them moved where that is asked for. They remember
 * which were asked for: what nobody asks for moves nothing.
 */
final class Values {
  private final double[] inches;
  private final BitSet asked = new BitSet();

  private Values(double[] inches) {
    this.inches = inches;
  }

  static Values of(List<Figure> figures) {
    return new Values(figures.stream().mapToDouble(Figure::inches).toArray());
  }

  /** The length of a figure, inches. */
  double of(Figure figure) {
    asked.set(figure.index());
    return inches[figure.index()];
  }

  /** Whether that figure was asked for so far. */
  boolean isAsked(Figure figure) {
    return asked.get(figure.index());
  }

  /** The same, one figure longer by so many inches. */
  Values moved(Figure figure, double by) {
    double[] other = inches.clone();
    other[figure.index()] += by;
    return new Values(other);
  }
}
