package org.jointwright.designer.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.plan.Outline;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.Together;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** Gives a straight side a typed length. */
public final class SideLength {
  private SideLength() {}

  /**
   * The desk with the side so long: its far end moves, and the next side along with it where the
   * one after runs alongside, so that what is square stays square. Empty where the slab would be
   * none.
   */
  public static Optional<Desk> set(Desk desk, Ref edge, Length length) {
    Outline outline = Picks.outline(desk.plan(), edge).orElseThrow();
    List<Edge> edges = outline.ring().edges();
    int n = edges.size();
    Edge side = edges.get(edge.index());
    Point by = side.direction(0).times(length.inches() - side.length());
    int end = (edge.index() + 1) % n;
    Edge after = edges.get((end + 1) % n);
    boolean alongside =
        n > 3 && Math.abs(side.direction(0).cross(after.direction(0))) < 0.02 && after.turn() == 0;
    List<Edit> moves = new ArrayList<>(List.of(move(edge, outline, end, by)));
    if (alongside) {
      moves.add(move(edge, outline, (end + 1) % n, by));
    }
    Desk changed = desk.edited(new Together(moves));
    return Soundness.holds(changed.plan(), edge.slab()) ? Optional.of(changed) : Optional.empty();
  }

  private static Edit move(Ref edge, Outline outline, int index, Point by) {
    Point to = outline.vertices().get(index).at().plus(by);
    return new SlabEdit.MoveCorner(new Ref(edge.slab(), edge.ring(), index), to);
  }
}
