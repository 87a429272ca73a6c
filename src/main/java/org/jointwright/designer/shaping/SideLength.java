package org.jointwright.designer.shaping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.app.Sides;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Soundness;
import org.jointwright.joint.Meeting;
import org.jointwright.measure.Length;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.LetteredCorner;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.History;
import org.jointwright.plan.edit.Named;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.Together;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Gives a straight side a typed length. Its first end stays where it is. */
public final class SideLength {
  /** Sides that lean less from each other, or from square, are meant so: the sine of that. */
  private static final double MEANT = 0.02;

  /** What comes along with the far end of the side. */
  public enum Way {
    /** The next side keeps its way, and its length. */
    NEXT_SIDE("window.did.lengthSide"),
    /** The next side turns about its other end. */
    CORNER_ALONE("window.did.lengthCorner");

    private final String did;

    Way(String did) {
      this.did = did;
    }
  }

  /**
   * The other way of what was done last.
   *
   * @param way which
   * @param name the side, or the corner, that moves then; empty where it has no letters
   * @param desk the desk with that done instead
   */
  public record Other(Way way, String name, Desk desk) {}

  private SideLength() {}

  /**
   * The desk with the side so long. The next side comes along where it is square to this one, or
   * the one after it runs alongside: what is square stays square. Otherwise, or where that leaves
   * no slab, the corner moves alone. Empty where the slab would be none either way.
   */
  public static Optional<Desk> set(Desk desk, Ref edge, Length length) {
    return set(desk, edge, length, usual(desk.plan(), edge))
        .or(() -> set(desk, edge, length, Way.CORNER_ALONE));
  }

  private static Way usual(Plan plan, Ref edge) {
    List<Edge> edges = edges(plan, edge);
    int n = edges.size();
    Edge side = edges.get(edge.index());
    Edge next = edges.get((edge.index() + 1) % n);
    Edge after = edges.get((edge.index() + 2) % n);
    Point way = side.direction(0);
    boolean isSquare = next instanceof Segment && Math.abs(way.dot(next.direction(0))) < MEANT;
    boolean isAlongside =
        after instanceof Segment && Math.abs(way.cross(after.direction(0))) < MEANT;
    return n > 3 && (isSquare || isAlongside) ? Way.NEXT_SIDE : Way.CORNER_ALONE;
  }

  private static Optional<Desk> set(Desk desk, Ref edge, Length length, Way way) {
    Plan plan = desk.plan();
    List<Edge> edges = edges(plan, edge);
    int n = edges.size();
    Edge side = edges.get(edge.index());
    Point by = side.direction(0).times(length.inches() - side.length());
    int end = (edge.index() + 1) % n;
    List<Edit> moves = new ArrayList<>(List.of(move(edge, edges, end, by)));
    if (way == Way.NEXT_SIDE) {
      if (n < 4) {
        return Optional.empty();
      }
      moves.add(move(edge, edges, (end + 1) % n, by));
      hanging(plan, at(edge, end)).forEach(id -> moves.add(new SlabEdit.MoveSlab(id, by)));
    }
    Desk changed =
        desk.edited(
            new Named(way.did, List.of(Sides.letters(plan, side), length), new Together(moves)));
    return Soundness.holds(changed.plan(), edge.slab()) ? Optional.of(changed) : Optional.empty();
  }

  /**
   * What else could have been meant when the length of this side was set last; empty where
   * something else was done last, or there is no other way.
   */
  public static Optional<Other> other(Desk desk, Ref edge) {
    if (desk.history().past().isEmpty()) {
      return Optional.empty();
    }
    History.Step last = desk.history().past().getLast();
    String name = Sides.letters(desk.plan(), edges(desk.plan(), edge).get(edge.index()));
    return last.edit() instanceof Named n
            && n.arguments().size() == 2
            && n.arguments().getFirst().equals(name)
            && n.arguments().getLast() instanceof Length length
        ? other(desk, edge, n.key(), length)
        : Optional.empty();
  }

  private static Optional<Other> other(Desk desk, Ref edge, String did, Length length) {
    Way way =
        did.equals(Way.NEXT_SIDE.did)
            ? Way.CORNER_ALONE
            : did.equals(Way.CORNER_ALONE.did) ? Way.NEXT_SIDE : null;
    if (way == null) {
      return Optional.empty();
    }
    List<Edge> edges = edges(desk.plan(), edge);
    Edge next = edges.get((edge.index() + 1) % edges.size());
    String name =
        way == Way.NEXT_SIDE
            ? Sides.letters(desk.plan(), next)
            : Lettering.of(desk.plan())
                .cornerAt(next.start())
                .map(LetteredCorner::letter)
                .orElse("");
    return set(desk.undone(), edge, length, way)
        .filter(d -> !d.plan().slabs().equals(desk.plan().slabs()))
        .map(d -> new Other(way, name, d.picking(desk.picked())));
  }

  /**
   * The slabs that touch a side and nothing else that would hold them where they are: no other side
   * of a slab, no building, no street.
   */
  private static List<String> hanging(Plan plan, Ref side) {
    if (side.ring() != Ref.OUTLINE) {
      return List.of();
    }
    List<Meeting> meetings = Meeting.of(plan);
    return plan.slabs().stream()
        .filter(s -> !s.id().equals(side.slab()) && !isHeld(s))
        .map(Slab::id)
        .filter(
            id -> {
              List<Meeting> its =
                  meetings.stream()
                      .filter(m -> m.first().equals(id) || m.second().equals(id))
                      .toList();
              return !its.isEmpty() && its.stream().allMatch(m -> isOn(m, side));
            })
        .toList();
  }

  private static boolean isHeld(Slab slab) {
    return slab.edges().values().stream()
        .map(EdgeSetting::against)
        .anyMatch(a -> a != Against.OPEN && a != Against.CONCRETE);
  }

  private static boolean isOn(Meeting m, Ref side) {
    return (m.first().equals(side.slab()) && m.firstEdge() == side.index())
        || (m.second().equals(side.slab()) && m.secondEdge() == side.index());
  }

  private static List<Edge> edges(Plan plan, Ref edge) {
    return Picks.outline(plan, edge).orElseThrow().ring().edges();
  }

  private static Ref at(Ref edge, int index) {
    return new Ref(edge.slab(), edge.ring(), index);
  }

  private static Edit move(Ref edge, List<Edge> edges, int index, Point by) {
    return new SlabEdit.MoveCorner(at(edge, index), edges.get(index).start().plus(by));
  }
}
