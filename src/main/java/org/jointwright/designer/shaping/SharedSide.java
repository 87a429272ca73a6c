package org.jointwright.designer.shaping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.app.Sides;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Soundness;
import org.jointwright.joint.Meeting;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Sizes;
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
 * A straight side pushed with the sides of other slabs that lie along it: on the ground they are
 * one line.
 */
public final class SharedSide {
  private static final String ALONE = "window.did.moveSide";
  private static final String BOTH = "window.did.moveSideWith";

  /**
   * The other way of what was pushed last.
   *
   * @param names the slabs whose sides lay along the one that was pushed
   * @param isAlone whether these stay where they were then
   * @param desk the desk with that done instead
   */
  public record Other(List<String> names, boolean isAlone, Desk desk) {}

  private SharedSide() {}

  /** The sides of other slabs that lie along a straight side for all their length. */
  public static List<Ref> along(Plan plan, Ref side) {
    Optional<Edge> edge = Picks.edge(plan, side);
    if (side.ring() != Ref.OUTLINE || edge.filter(Segment.class::isInstance).isEmpty()) {
      return List.of();
    }
    return Meeting.of(plan).stream()
        .flatMap(m -> other(m, side).stream())
        .filter(o -> Picks.edge(plan, o).filter(e -> isOn(edge.get(), e)).isPresent())
        .toList();
  }

  private static Optional<Ref> other(Meeting m, Ref side) {
    if (m.first().equals(side.slab()) && m.firstEdge() == side.index()) {
      return Optional.of(Ref.outline(m.second(), m.secondEdge()));
    }
    return m.second().equals(side.slab()) && m.secondEdge() == side.index()
        ? Optional.of(Ref.outline(m.first(), m.firstEdge()))
        : Optional.empty();
  }

  private static boolean isOn(Edge side, Edge other) {
    return other instanceof Segment
        && side.distance(other.start()) <= Sizes.CLEAR
        && side.distance(other.end()) <= Sizes.CLEAR;
  }

  /**
   * A side pushed outwards by so many inches, and those that lie along it with it. Empty where one
   * of the slabs would be none.
   *
   * @param with the sides that go along
   * @param goesOn whether it is a part of the step before
   */
  public static Optional<Desk> pushed(
      Desk desk, Ref side, List<Ref> with, double by, boolean goesOn) {
    Plan plan = desk.plan();
    Optional<Edge> edge = Picks.edge(plan, side);
    if (edge.isEmpty()) {
      return Optional.empty();
    }
    Point out = SideShape.out(edge.get());
    List<Edit> moves = new ArrayList<>();
    List<Ref> all = new ArrayList<>(List.of(side));
    all.addAll(with);
    for (Ref ref : all) {
      Optional<Edge> own = Picks.edge(plan, ref);
      double far = own.map(e -> by * Math.signum(SideShape.out(e).dot(out))).orElse(0.0);
      List<Edit> its = SideShape.moves(plan, ref, far);
      if (its.isEmpty()) {
        return Optional.empty();
      }
      moves.addAll(its);
    }
    Edit edit = named(plan, edge.get(), with, moves);
    Desk pushed = goesOn ? desk.goingOn(edit) : desk.edited(edit);
    return all.stream().allMatch(r -> Soundness.holds(pushed.plan(), r.slab()))
        ? Optional.of(pushed)
        : Optional.empty();
  }

  private static Edit named(Plan plan, Edge side, List<Ref> with, List<Edit> moves) {
    String letters = Sides.letters(plan, side);
    return with.isEmpty()
        ? new Named(ALONE, List.of(letters), new Together(moves))
        : new Named(BOTH, List.of(letters, String.join(", ", names(with))), new Together(moves));
  }

  private static List<String> names(List<Ref> with) {
    return with.stream().map(Ref::slab).distinct().toList();
  }

  /**
   * What else could have been meant when this side was pushed last: that the slabs along it stay,
   * or come along. Empty where something else was done last, or there is no other way.
   */
  public static Optional<Other> other(Desk desk, Ref side) {
    if (desk.history().past().isEmpty()) {
      return Optional.empty();
    }
    History.Step last = desk.history().past().getLast();
    List<Ref> with = along(last.before(), side);
    return last.edit() instanceof Named n
            && (n.key().equals(ALONE) || n.key().equals(BOTH))
            && n.edit() instanceof Together t
            && !t.edits().isEmpty()
            && t.edits().getFirst() instanceof SlabEdit.MoveCorner m
            && m.corner().equals(side)
            && !with.isEmpty()
        ? other(desk, last.before(), side, n.key().equals(BOTH) ? List.of() : with)
            .map(d -> new Other(names(with), n.key().equals(BOTH), d.picking(desk.picked())))
        : Optional.empty();
  }

  private static Optional<Desk> other(Desk desk, Plan before, Ref side, List<Ref> with) {
    Edge was = Picks.edge(before, side).orElseThrow();
    return Picks.edge(desk.plan(), side)
        .map(e -> e.start().minus(was.start()).dot(SideShape.out(was)))
        .flatMap(by -> pushed(desk.undone(), side, with, by, false))
        .filter(d -> !d.plan().slabs().equals(desk.plan().slabs()));
  }
}
