package org.jointwright.joint;

import java.util.List;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;

/**
 * A face of a slab cut by its joints.
 *
 * @param id its name within the slab, P1 first
 * @param outer its sides, counter-clockwise; a node at every joint end that lies on it
 * @param holes the sides of each hole, clockwise, so that the panel lies on their left
 */
public record Panel(String id, List<Side> outer, List<List<Side>> holes) {
  /** Copies the lists. */
  public Panel {
    outer = List.copyOf(outer);
    holes = holes.stream().map(List::copyOf).toList();
  }

  /** The panel's outer ring. */
  public Ring ring() {
    return new Ring(outer.stream().map(Side::edge).toList());
  }

  /** The panel with its holes. */
  public Region region() {
    return new Region(
        ring(), holes.stream().map(h -> new Ring(h.stream().map(Side::edge).toList())).toList());
  }

  /** Its area in square inches. */
  public double area() {
    return region().area();
  }
}
