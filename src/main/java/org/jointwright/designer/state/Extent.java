package org.jointwright.designer.state;

import java.util.Optional;
import java.util.stream.Stream;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Box;

/** How far what is drawn reaches. */
public final class Extent {
  private Extent() {}

  /** The box round the slabs and the outline being drawn; empty on blank paper. */
  public static Optional<Box> of(Desk desk) {
    Stream<Box> slabs = desk.plan().slabs().stream().map(s -> s.outline().ring().box());
    Stream<Box> drawn =
        desk.draft().stream()
            .flatMap(d -> d.placed().stream())
            .map(Vertex::at)
            .map(p -> Box.of(p, p));
    return Stream.concat(slabs, drawn).reduce(Box::with);
  }
}
