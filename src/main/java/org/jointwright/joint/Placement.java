package org.jointwright.joint;

import java.util.List;
import org.jointwright.measure.Area;
import org.jointwright.measure.Length;
import org.jointwright.measure.Volume;
import org.jointwright.plan.Pour;

/**
 * What is placed in one pour: panels that only contraction joints part from each other.
 *
 * @param panels the panels, in their order in the layout; one at least
 * @param area their area, square inches
 * @param volume what they hold, to the slab's thickness
 * @param width the smallest distance between two parallel lines that hold them all, inches: what
 *     the board must span, from form to form
 */
public record Placement(List<Panel> panels, double area, Volume volume, double width) {
  /** Lengths are met within this, inches: the rules' tolerance. */
  private static final double LENGTH = 0.5;

  /** Volumes are met within this share: what no plant could measure. */
  private static final double SHARE = 1e-6;

  /** Copies the list. */
  public Placement {
    panels = List.copyOf(panels);
  }

  /** What panels hold in a slab of a thickness, and how wide they are. */
  static Placement of(List<Panel> panels, double width, Length thickness) {
    double area = panels.stream().mapToDouble(Panel::area).sum();
    return new Placement(panels, area, Volume.under(new Area(area), thickness), width);
  }

  /** Whether it holds more than one pour may. */
  public boolean isTooMuch(Pour limits) {
    return limits
        .most()
        .map(m -> volume.cubicInches() > m.cubicInches() * (1 + SHARE))
        .orElse(false);
  }

  /** Whether it is wider than the board reaches. */
  public boolean isTooWide(Pour limits) {
    return limits.strip().map(s -> width > s.inches() + LENGTH).orElse(false);
  }

  /** Whether it keeps within the limits. */
  public boolean isWithin(Pour limits) {
    return !isTooMuch(limits) && !isTooWide(limits);
  }

  /** How much it is of what one pour may be, by whichever limit is nearer; 0 without limits. */
  public double load(Pour limits) {
    double much = limits.most().map(m -> volume.cubicInches() / m.cubicInches()).orElse(0.0);
    double wide = limits.strip().map(s -> width / s.inches()).orElse(0.0);
    return Math.max(much, wide);
  }
}
