package org.jointwright.joint;

import java.util.List;
import org.jointwright.shape.Corner;
import org.jointwright.shape.Edge;
import org.jointwright.shape.EnclosingRectangle;
import org.jointwright.shape.Hull;
import org.jointwright.shape.Ring;

/**
 * The measures of a panel that rules and reports speak of.
 *
 * @param area without its holes, square inches
 * @param rectangle its enclosing rectangle
 * @param width the smallest distance between two parallel lines that hold it, inches
 * @param corners its corners, those within 1/2 in of each other taken as one; {@code before} and
 *     {@code after} count the panel's outer sides
 */
public record PanelMeasures(
    double area, EnclosingRectangle rectangle, double width, List<Corner> corners) {
  /** Corners nearer to each other than this count as one, inches: the rules' length tolerance. */
  private static final double TOGETHER = 0.5;

  /** Copies the list. */
  public PanelMeasures {
    corners = List.copyOf(corners);
  }

  /** The measures of a panel. */
  public static PanelMeasures of(Panel panel) {
    Ring ring = panel.ring();
    Hull hull = Hull.of(ring);
    List<Edge> edges = ring.edges();
    return new PanelMeasures(
        panel.area(), EnclosingRectangle.of(hull), hull.width(), Corner.of(edges, TOGETHER));
  }

  /** Its length, the longer side of the rectangle, inches. */
  public double longSide() {
    return rectangle.longSide();
  }

  /** Its width across the rectangle, inches. */
  public double shortSide() {
    return rectangle.shortSide();
  }

  /** The longer side over the shorter. */
  public double aspect() {
    return rectangle.aspect();
  }

  /** The share of the enclosing rectangle that it fills, at most 1. */
  public double fill() {
    return area / rectangle.area();
  }
}
