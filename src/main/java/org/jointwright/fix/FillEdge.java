package org.jointwright.fix;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Subject;
import org.jointwright.check.along.Nearness;
import org.jointwright.check.along.Stretches;
import org.jointwright.fix.line.Floor;
import org.jointwright.fix.line.Redraft;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.Together;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Traced;

/** Sets filler along an edge that something holds, or says that nothing does. */
final class FillEdge implements Remedy {
  @Override
  public List<Fix> proposals(Broken broken) {
    return broken.edge().map(e -> proposals(broken, e)).orElse(List.of());
  }

  private static List<Fix> proposals(Broken broken, Subject.OnEdge on) {
    Slab slab = broken.slab();
    int ring = on.opening().orElse(Ref.OUTLINE);
    Edge edge =
        (ring == Ref.OUTLINE ? slab.outline() : slab.openings().get(ring).outline())
            .ring()
            .edges()
            .get(on.edge());
    EdgeSetting setting =
        ring == Ref.OUTLINE ? slab.edge(on.edge()) : slab.openings().get(ring).edge(on.edge());
    String side = broken.marks().side(edge.at(0.5));
    List<Fix> fixes = new ArrayList<>();
    if (setting.floats()) {
      Ref ref = new Ref(slab.id(), ring, on.edge());
      fixes.add(
          Fix.of(
              "fix.filler.held",
              "fix.did.filler",
              List.of(side),
              new Together(
                  List.of(
                      filled(broken, edge).edit(),
                      new SlabEdit.SetEdge(ref, setting.withFloats(false))))));
      return fixes;
    }
    fixes.add(
        Fix.of("fix.filler.edge", "fix.did.filler", List.of(side), filled(broken, edge).edit()));
    fixes.add(
        Fix.of(
            "fix.floats",
            "fix.did.floats",
            List.of(side),
            new SlabEdit.SetEdge(new Ref(slab.id(), ring, on.edge()), setting.withFloats(true))));
    return fixes;
  }

  /** Filler on whatever of the edge has none. */
  private static Redraft filled(Broken broken, Edge edge) {
    List<Edge> filler = filler(broken.plan());
    Redraft redraft = broken.redraft();
    List<Stretches.Stretch> bare =
        Stretches.of(
            edge,
            p ->
                !Nearness.isOn(filler, p, Floor.ON)
                    && broken.floor().rims().stream()
                        .noneMatch(
                            l ->
                                l.source() instanceof org.jointwright.joint.Source.OnBoxOut
                                    && l.edge().distance(p) <= Floor.ON));
    for (Stretches.Stretch s : bare) {
      if (s.length() > Floor.ON) {
        Edge part = s.from() == 0 && s.to() == 1 ? edge : edge.part(s.from(), s.to());
        redraft = redraft.adding(JointKind.ISOLATION, Path.of(part), Purpose.ISOLATION);
      }
    }
    return redraft;
  }

  private static List<Edge> filler(Plan plan) {
    return plan.slabs().stream()
        .flatMap(s -> s.joints().stream())
        .filter(j -> j.kind() == JointKind.ISOLATION)
        .flatMap(j -> Traced.path(j.path()).edges().stream())
        .toList();
  }
}
