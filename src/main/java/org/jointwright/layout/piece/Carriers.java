package org.jointwright.layout.piece;

import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Segment;

/** The carriers of edges. */
public final class Carriers {
  private Carriers() {}

  /** The line or circle that {@code edge} runs along. */
  public static Carrier of(Edge edge) {
    return switch (edge) {
      case Segment s -> Carrier.Line.through(s.start(), s.end());
      case Arc a -> new Carrier.Circle(a.centre(), a.radius());
    };
  }
}
