package org.jointwright.reason;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.check.evidence.Judged;
import org.jointwright.joint.Cutout;
import org.jointwright.joint.Cutouts;
import org.jointwright.joint.Meeting;
import org.jointwright.joint.Panel;
import org.jointwright.joint.Placement;
import org.jointwright.joint.Placements;
import org.jointwright.joint.Side;
import org.jointwright.joint.SlabLayout;
import org.jointwright.joint.Source;
import org.jointwright.measure.Length;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Pour;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** What a joint takes its place from as a whole. */
final class WholeOrigins {
  private final Ground ground;
  private final Judged judged;
  private final Joint joint;
  private final List<Origin> found = new ArrayList<>();

  private WholeOrigins(Ground ground, Judged judged, Joint joint) {
    this.ground = ground;
    this.judged = judged;
    this.joint = joint;
  }

  /** What makes the joint what it is: the edge it fills, the slab it meets, the tip it cuts. */
  static List<Origin> of(Ground ground, Judged judged, Joint joint) {
    WholeOrigins work = new WholeOrigins(ground, judged, joint);
    switch (joint.kind()) {
      case ISOLATION -> work.filler();
      case CONSTRUCTION -> work.slabsMeet();
      case CONTRACTION -> work.tip();
    }
    if (joint.locked()) {
      work.found.add(new Origin.Locked(Where.ALONG));
    }
    return work.found;
  }

  /** The panels it parts; the last thing to be said of a joint of which nothing else is known. */
  static Optional<Origin> parts(SlabLayout laid, Joint joint) {
    List<Panel> beside =
        laid.panels().stream()
            .filter(
                p ->
                    p.outer().stream()
                        .anyMatch(s -> s.source().equals(new Source.OnJoint(joint.id()))))
            .toList();
    return beside.size() < 2
        ? Optional.empty()
        : Optional.of(
            new Origin.Parts(Where.ALONG, beside.stream().mapToDouble(Panel::area).sum()));
  }

  private void filler() {
    for (Cutout c : Cutouts.of(ground.plan(), ground.slab())) {
      if (lies(c.ring().edges(), joint.path())) {
        found.add(new Origin.RoundObject(Where.ALONG, c.fixed()));
        return;
      }
    }
    Slab slab = ground.slab();
    Ring outline = slab.outline().ring();
    for (int i = 0; i < outline.edges().size(); i++) {
      edge(outline.edges().get(i), slab.edge(i), new Source.OnOutline(i));
    }
    for (int n = 0; n < slab.openings().size(); n++) {
      Opening o = slab.openings().get(n);
      List<Edge> edges = o.outline().ring().edges();
      for (int i = 0; i < edges.size(); i++) {
        edge(edges.get(i), o.edge(i), new Source.OnOpening(n, i));
      }
    }
  }

  /** Filler runs along an edge when a good part of it does: it may turn a corner with the edge. */
  private void edge(Edge edge, EdgeSetting setting, Source source) {
    boolean along =
        joint.path().edges().stream()
            .anyMatch(
                e ->
                    e.length() > 1
                        && edge.distance(e.at(0.5)) <= Ground.ON
                        && edge.distance(e.at(0.25)) <= Ground.ON
                        && edge.distance(e.at(0.75)) <= Ground.ON);
    if (along) {
      found.add(new Origin.AlongEdge(Where.ALONG, source, setting.against()));
    }
  }

  private static boolean lies(List<Edge> on, Path path) {
    for (Edge e : path.edges()) {
      for (double t : new double[] {0, 0.5, 1}) {
        Point p = e.at(t);
        if (on.stream().noneMatch(x -> x.distance(p) <= Ground.ON)) {
          return false;
        }
      }
    }
    return true;
  }

  private void slabsMeet() {
    for (Meeting m : ground.meetings()) {
      String own = ground.slab().id();
      boolean ours = m.first().equals(own) || m.second().equals(own);
      if (ours && m.stretch().distance(joint.path().edges().getFirst().at(0.5)) <= Ground.ON) {
        String other = m.first().equals(own) ? m.second() : m.first();
        found.add(new Origin.SlabsMeet(Where.ALONG, other));
        return;
      }
    }
    if (ground.plan().pour().isLimited() && !joint.locked()) {
      found.add(pourEnds());
    }
  }

  private Origin pourEnds() {
    Pour limits = ground.plan().pour();
    Optional<Placement> whole = Placements.in(judged.laid()).without(joint.id());
    return new Origin.PourEnds(
        Where.ALONG,
        whole.filter(p -> p.isTooMuch(limits)).map(Placement::volume),
        whole.filter(p -> p.isTooWide(limits)).map(p -> Length.inches(p.width())),
        limits);
  }

  private void tip() {
    if (!judged.corners().joints().contains(joint.id())) {
      return;
    }
    Point a = joint.path().start();
    Point b = joint.path().end();
    ground.spots().stream()
        .filter(
            s ->
                s.before().edge().distance(a) + s.after().edge().distance(b) <= 2 * Ground.ON
                    || s.before().edge().distance(b) + s.after().edge().distance(a)
                        <= 2 * Ground.ON)
        .findFirst()
        .ifPresent(
            s ->
                found.add(
                    new Origin.CornerTip(
                        Where.ALONG, s.at(), ground.letter(s.at()), s.corner().interior())));
  }

  /** The arc of an edge that a joint which is an arc itself runs beside. */
  static Optional<Origin> concentric(Ground ground, Joint joint) {
    if (joint.kind() == JointKind.ISOLATION
        || !(joint.path().edges().getFirst() instanceof Arc own)) {
      return Optional.empty();
    }
    for (Side s : ground.sides()) {
      if (s.edge() instanceof Arc a && a.centre().distance(own.centre()) < 1) {
        return Optional.of(new Origin.Concentric(Where.ALONG, s.source(), a.centre()));
      }
    }
    return Optional.empty();
  }
}
