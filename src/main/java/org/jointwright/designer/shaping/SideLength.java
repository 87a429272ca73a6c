package org.jointwright.designer.shaping;

import java.util.ArrayList;
import java.util.Arrays;
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

/**
 * Gives a straight side a typed length. Its first end stays where it is, unless what is at the
 * other end is held there by a building, a street or another slab.
 */
public final class SideLength {
  /** Sides that lean less from each other, or from square, are meant so: the sine of that. */
  private static final double MEANT = 0.02;

  /** What comes along with the end of the side that moves. */
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

  /**
   * The end of a side that moves.
   *
   * @param side the side
   * @param corner the corner at that end
   * @param beyond the corner after it, away from the side
   * @param next the side between these two
   * @param after the side after that
   * @param out the way out of the side at this end, of length 1
   */
  private record End(Ref side, int corner, int beyond, int next, int after, Point out) {
    static End far(Ref side, List<Edge> edges) {
      int n = edges.size();
      int i = side.index();
      Point out = edges.get(i).direction(0);
      return new End(side, (i + 1) % n, (i + 2) % n, (i + 1) % n, (i + 2) % n, out);
    }

    static End near(Ref side, List<Edge> edges) {
      int n = edges.size();
      int i = side.index();
      int before = (i + n - 1) % n;
      Point out = edges.get(i).direction(0).times(-1);
      return new End(side, i, before, before, (i + n - 2) % n, out);
    }

    Ref at(int index) {
      return new Ref(side.slab(), side.ring(), index);
    }
  }

  private SideLength() {}

  /**
   * The desk with the side so long. The next side comes along where it is square to this one, or
   * the one after it runs alongside: what is square stays square. Otherwise, or where that leaves
   * no slab, the corner moves alone. Empty where the slab would be none either way.
   */
  public static Optional<Desk> set(Desk desk, Ref edge, Length length) {
    End end = end(desk.plan(), edge);
    return set(desk, end, length, usual(desk.plan(), end))
        .or(() -> set(desk, end, length, Way.CORNER_ALONE));
  }

  /** Whether the step of that name typed a length. */
  static boolean isLength(String did) {
    return Arrays.stream(Way.values()).anyMatch(w -> w.did.equals(did));
  }

  /** The far end, unless the side there is held and the one at the near end is not. */
  private static End end(Plan plan, Ref edge) {
    List<Edge> edges = edges(plan, edge);
    End far = End.far(edge, edges);
    End near = End.near(edge, edges);
    return isHeld(plan, far.at(far.next)) && !isHeld(plan, near.at(near.next)) ? near : far;
  }

  private static Way usual(Plan plan, End end) {
    List<Edge> edges = edges(plan, end.side);
    Edge next = edges.get(end.next);
    Edge after = edges.get(end.after);
    boolean isSquare = next instanceof Segment && Math.abs(end.out.dot(next.direction(0))) < MEANT;
    boolean isAlongside =
        after instanceof Segment && Math.abs(end.out.cross(after.direction(0))) < MEANT;
    return edges.size() > 3 && (isSquare || isAlongside) ? Way.NEXT_SIDE : Way.CORNER_ALONE;
  }

  private static Optional<Desk> set(Desk desk, End end, Length length, Way way) {
    Plan plan = desk.plan();
    List<Edge> edges = edges(plan, end.side);
    Edge side = edges.get(end.side.index());
    Point by = end.out.times(length.inches() - side.length());
    List<Edit> moves = new ArrayList<>(List.of(move(end, edges, end.corner, by)));
    if (way == Way.NEXT_SIDE) {
      if (edges.size() < 4) {
        return Optional.empty();
      }
      moves.add(move(end, edges, end.beyond, by));
      hanging(plan, end.at(end.next)).forEach(id -> moves.add(new SlabEdit.MoveSlab(id, by)));
    }
    Desk changed =
        desk.edited(
            new Named(way.did, List.of(Sides.letters(plan, side), length), new Together(moves)));
    return Soundness.holds(changed.plan(), end.side.slab())
        ? Optional.of(changed)
        : Optional.empty();
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
    Edge side = edges(desk.plan(), edge).get(edge.index());
    return last.edit() instanceof Named n
            && n.edit() instanceof Together t
            && !t.edits().isEmpty()
            && !n.arguments().isEmpty()
            && n.arguments().getLast() instanceof Length length
            && Math.abs(side.length() - length.inches()) < 1e-6
            && t.edits().getFirst() instanceof SlabEdit.MoveCorner moved
        ? other(desk, end(last.before(), edge), moved.corner(), n.key(), length)
        : Optional.empty();
  }

  private static Optional<Other> other(Desk desk, End end, Ref moved, String did, Length length) {
    Way way =
        did.equals(Way.NEXT_SIDE.did)
            ? Way.CORNER_ALONE
            : did.equals(Way.CORNER_ALONE.did) ? Way.NEXT_SIDE : null;
    if (way == null || !moved.equals(end.at(end.corner))) {
      return Optional.empty();
    }
    List<Edge> edges = edges(desk.plan(), end.side);
    String name =
        way == Way.NEXT_SIDE
            ? Sides.letters(desk.plan(), edges.get(end.next))
            : Lettering.of(desk.plan())
                .cornerAt(edges.get(end.corner).start())
                .map(LetteredCorner::letter)
                .orElse("");
    return set(desk.undone(), end, length, way)
        .filter(d -> !d.plan().slabs().equals(desk.plan().slabs()))
        .map(d -> new Other(way, name, d.picking(desk.picked())));
  }

  /** Whether a side cannot go elsewhere: for what it is against, or for a slab there. */
  private static boolean isHeld(Plan plan, Ref side) {
    if (side.ring() != Ref.OUTLINE) {
      return false;
    }
    List<Meeting> there = Meeting.of(plan).stream().filter(m -> isOn(m, side)).toList();
    Against against = plan.slab(side.slab()).orElseThrow().edge(side.index()).against();
    boolean isSlab = against == Against.CONCRETE && !there.isEmpty();
    List<String> hanging = hanging(plan, side);
    return (against != Against.OPEN && !isSlab)
        || there.stream()
            .map(m -> m.first().equals(side.slab()) ? m.second() : m.first())
            .anyMatch(id -> !hanging.contains(id));
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

  private static Edit move(End end, List<Edge> edges, int index, Point by) {
    return new SlabEdit.MoveCorner(end.at(index), edges.get(index).start().plus(by));
  }
}
