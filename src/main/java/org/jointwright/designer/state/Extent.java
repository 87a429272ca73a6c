package org.jointwright.designer.state;

import java.util.Optional;
import java.util.stream.Stream;
import org.jointwright.plan.Photo;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;

/** How far what is drawn reaches. */
public final class Extent {
  private Extent() {}

  /** The desk with all of the plan in sight, where it was kept so and has gone out of it. */
  public static Desk inSight(Desk desk) {
    boolean isOut =
        of(desk)
            .filter(
                b ->
                    !desk.viewport().clear().holds(new Point(b.minX(), b.minY()))
                        || !desk.viewport().clear().holds(new Point(b.maxX(), b.maxY())))
            .isPresent();
    return desk.sight().isFitted() && isOut ? desk.fitted() : desk;
  }

  /** The box round the slabs; empty where there are none. */
  static Optional<Box> ofSlabs(Desk desk) {
    return desk.plan().slabs().stream().map(s -> s.outline().ring().box()).reduce(Box::with);
  }

  /** The box round slabs, photo, and what is being drawn or set down; empty on blank paper. */
  public static Optional<Box> of(Desk desk) {
    Stream<Box> slabs = ofSlabs(desk).stream();
    Stream<Box> drawn =
        desk.draft().stream()
            .flatMap(d -> d.placed().stream())
            .map(Vertex::at)
            .map(p -> Box.of(p, p));
    Stream<Box> held = desk.hand().waiting().flatMap(Hold.Waiting::box).stream();
    Stream<Box> beneath = desk.plan().photo().stream().map(Photo::box);
    return Stream.of(slabs, drawn, held, beneath).flatMap(s -> s).reduce(Box::with);
  }
}
