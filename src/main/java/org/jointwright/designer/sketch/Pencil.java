package org.jointwright.designer.sketch;

import java.util.List;
import org.jointwright.shape.Point;

/**
 * Where the pencil stands.
 *
 * @param at the point of the plan
 * @param guides what drew it there, none where it stands free
 * @param isByKeys whether keys led it there, so that Enter sets a corner down where it stands
 */
public record Pencil(Point at, List<Guide> guides, boolean isByKeys) {
  /** A pencil led by the pointer. */
  public Pencil(Point at, List<Guide> guides) {
    this(at, guides, false);
  }

  /** Copies the list. */
  public Pencil {
    guides = List.copyOf(guides);
  }

  /** A pencil that nothing draws. */
  public static Pencil free(Point at) {
    return new Pencil(at, List.of());
  }

  /** This pencil, led by keys. */
  public Pencil byKeys() {
    return new Pencil(at, guides, true);
  }

  /** Whether it stands at the first corner, so that a click closes the outline. */
  public boolean closes() {
    return guides.stream().anyMatch(g -> g.kind() == Guide.Kind.FIRST_CORNER);
  }
}
