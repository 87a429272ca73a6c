package org.jointwright.designer.sketch;

import java.util.List;
import org.jointwright.shape.Point;

/**
 * Where the pencil stands.
 *
 * @param at the point of the plan
 * @param guides what drew it there, none where it stands free
 */
public record Pencil(Point at, List<Guide> guides) {
  /** Copies the list. */
  public Pencil {
    guides = List.copyOf(guides);
  }

  /** A pencil that nothing draws. */
  public static Pencil free(Point at) {
    return new Pencil(at, List.of());
  }

  /** Whether it stands at the first corner, so that a click closes the outline. */
  public boolean closes() {
    return guides.stream().anyMatch(g -> g.kind() == Guide.Kind.FIRST_CORNER);
  }
}
