package org.jointwright.fix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jointwright.fix.line.Floor;
import org.jointwright.fix.line.Redraft;
import org.jointwright.fix.name.Places;
import org.jointwright.joint.Meeting;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.Together;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;

/**
 * Sets filler where two slabs run along each other, so that neither needs the joints of the other.
 * A side that lies whole on the neighbour is said to be against other concrete, so that filler
 * comes there again when joints are laid anew; where no side does, the filler itself is locked.
 */
final class FillBetween implements Remedy {
  @Override
  public List<Fix> proposals(Broken broken) {
    List<Fix> fixes = new ArrayList<>();
    for (Meeting m : Meeting.of(broken.plan())) {
      boolean isOwn = m.first().equals(broken.slab().id()) || m.second().equals(broken.slab().id());
      if (isOwn && m.stretch().distance(broken.finding().at()) <= Floor.ON) {
        fixes.add(between(broken, m));
      }
    }
    return fixes;
  }

  private static Fix between(Broken broken, Meeting m) {
    String own = broken.slab().id();
    String other = m.first().equals(own) ? m.second() : m.first();
    List<Edit> edits = new ArrayList<>();
    List<Ref> whole =
        sides(m, own).stream().filter(r -> isWhole(broken.plan(), r, m.stretch())).toList();
    whole.stream().findFirst().ifPresent(r -> edits.add(held(broken.plan(), r)));
    edits.add(filled(slab(broken.plan(), own), m.stretch(), whole.isEmpty()));
    Slab beyond = slab(broken.plan(), other);
    Redraft freed = Redraft.of(beyond).without(along(beyond, m.stretch()));
    if (freed.joints().size() < beyond.joints().size()) {
      edits.add(freed.edit());
    }
    return Fix.of(
        "fix.filler.between",
        "fix.did.filler",
        List.of(name(broken.marks(), m.stretch()), own, other),
        new Together(edits));
  }

  /** The letters at the ends of a stretch; the side that it is on where an end has none. */
  private static String name(Places marks, Edge stretch) {
    Optional<String> from = marks.lettering().cornerAt(stretch.start()).map(c -> c.letter());
    Optional<String> to = marks.lettering().cornerAt(stretch.end()).map(c -> c.letter());
    return from.isPresent() && to.isPresent()
        ? Stream.of(from.get(), to.get()).sorted().collect(Collectors.joining("–"))
        : marks.side(stretch.at(0.5));
  }

  /** Both sides of a meeting, that of the slab named first. */
  private static List<Ref> sides(Meeting m, String own) {
    Ref first = new Ref(m.first(), Ref.OUTLINE, m.firstEdge());
    Ref second = new Ref(m.second(), Ref.OUTLINE, m.secondEdge());
    return m.first().equals(own) ? List.of(first, second) : List.of(second, first);
  }

  private static boolean isWhole(Plan plan, Ref side, Edge stretch) {
    Edge edge = slab(plan, side.slab()).outline().ring().edges().get(side.index());
    return edge.length() - stretch.length() <= 2 * Floor.ON;
  }

  private static Edit held(Plan plan, Ref side) {
    EdgeSetting setting = slab(plan, side.slab()).edge(side.index());
    return new SlabEdit.SetEdge(side, setting.withAgainst(Against.CONCRETE).withFloats(false));
  }

  /** Filler in place of whatever joint runs along the stretch. */
  private static Edit filled(Slab slab, Edge stretch, boolean isLocked) {
    Redraft cleared = Redraft.of(slab).without(along(slab, stretch));
    Path path = Path.of(stretch);
    return isLocked
        ? cleared.adding(JointKind.ISOLATION, path, Purpose.ISOLATION).edit()
        : cleared.laying(JointKind.ISOLATION, path, Purpose.ISOLATION).edit();
  }

  /** The joints of a slab that lie along a stretch. */
  private static Set<String> along(Slab slab, Edge stretch) {
    return slab.joints().stream()
        .filter(
            j ->
                j.path().edges().stream()
                    .allMatch(
                        e ->
                            stretch.distance(e.start()) <= Floor.ON
                                && stretch.distance(e.at(0.5)) <= Floor.ON
                                && stretch.distance(e.end()) <= Floor.ON))
        .map(j -> j.id())
        .collect(Collectors.toSet());
  }

  private static Slab slab(Plan plan, String id) {
    return plan.slab(id).orElseThrow();
  }
}
