package org.jointwright.sheet.page;

import java.util.List;
import org.jointwright.measure.UnitSystem;

/**
 * A drawing scale of the usual series: architects' and engineers' scales for feet (from memory),
 * 1:n for metric (the steps of ISO 5455 and, between them, 25, 75, 125, 150, 250, 300 and 400, as
 * on three-edged rules, from memory).
 *
 * @param label as it is printed
 * @param ratio how many times smaller than true the drawing is
 */
public record Scale(String label, double ratio) {
  private static final double MM_PER_INCH = 25.4;

  private static final List<Scale> FEET =
      List.of(
          new Scale("1″ = 1′-0″", 12),
          new Scale("¾″ = 1′-0″", 16),
          new Scale("½″ = 1′-0″", 24),
          new Scale("⅜″ = 1′-0″", 32),
          new Scale("¼″ = 1′-0″", 48),
          new Scale("³⁄₁₆″ = 1′-0″", 64),
          new Scale("⅛″ = 1′-0″", 96),
          new Scale("1″ = 10′", 120),
          new Scale("³⁄₃₂″ = 1′-0″", 128),
          new Scale("¹⁄₁₆″ = 1′-0″", 192),
          new Scale("1″ = 20′", 240),
          new Scale("1″ = 30′", 360),
          new Scale("1″ = 40′", 480),
          new Scale("1″ = 50′", 600),
          new Scale("1″ = 60′", 720),
          new Scale("1″ = 100′", 1200),
          new Scale("1″ = 200′", 2400),
          new Scale("1″ = 400′", 4800),
          new Scale("1″ = 1000′", 12000),
          new Scale("1″ = 5000′", 60000));

  private static final List<Scale> METRIC =
      List.of(
          new Scale("1:10", 10),
          new Scale("1:20", 20),
          new Scale("1:25", 25),
          new Scale("1:50", 50),
          new Scale("1:75", 75),
          new Scale("1:100", 100),
          new Scale("1:125", 125),
          new Scale("1:150", 150),
          new Scale("1:200", 200),
          new Scale("1:250", 250),
          new Scale("1:300", 300),
          new Scale("1:400", 400),
          new Scale("1:500", 500),
          new Scale("1:1000", 1000),
          new Scale("1:2000", 2000),
          new Scale("1:5000", 5000),
          new Scale("1:20000", 20000),
          new Scale("1:100000", 100000));

  /** Millimetres of paper for an inch of the plan. */
  public double perInch() {
    return MM_PER_INCH / ratio;
  }

  /**
   * The series for a family of units, the largest drawing first, for pages that are enlarged when
   * they are bound: until then the drawing is smaller by as much.
   *
   * @param enlarged how much larger the pages become, 1 for not at all
   */
  public static List<Scale> series(UnitSystem units, double enlarged) {
    List<Scale> series = units == UnitSystem.METRIC ? METRIC : FEET;
    return series.stream().map(s -> new Scale(s.label, s.ratio * enlarged)).toList();
  }

  /**
   * The largest scale at which something {@code width} by {@code height} inches lies in a field of
   * so many millimetres; the smallest of the series where even that does not hold it.
   */
  public static Scale fitting(
      List<Scale> series, double width, double height, double fieldWidth, double fieldHeight) {
    return series.stream()
        .filter(s -> width * s.perInch() <= fieldWidth && height * s.perInch() <= fieldHeight)
        .findFirst()
        .orElse(series.getLast());
  }
}
