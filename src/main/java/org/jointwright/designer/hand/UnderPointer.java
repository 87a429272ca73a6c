package org.jointwright.designer.hand;

import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.plan.Feature;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** Finds what lies under the pointer. */
public final class UnderPointer {
  private static final double CORNER = 10;
  private static final double LINE = 7;

  /** From where to where inside its side a mark is taken hold of; pixels. */
  private static final double MARK_NEAR = 3;

  private static final double MARK_FAR = 12;

  private final Desk desk;
  private final Plan plan;
  private final Point at;
  private final double pixel;

  private UnderPointer(Desk desk, Point at) {
    this.desk = desk;
    plan = desk.plan();
    this.at = at;
    pixel = desk.viewport().inches(1);
  }

  /**
   * What lies at {@code at}: corners before lines, lines before bodies. Found is what has facts at
   * the step the user is at: joints among the joints only, so that filler never hides its edge.
   */
  public static Pick of(Desk desk, Point at) {
    UnderPointer u = new UnderPointer(desk, at);
    return switch (desk.sight().step()) {
      case OUTLINE ->
          u.corner()
              .or(u::feature)
              .or(u::edge)
              .or(u::fixed)
              .or(u::opening)
              .or(u::given)
              .or(u::zone)
              .or(u::slab)
              .or(u::photo)
              .orElse(Pick.NOTHING);
      case SECTION -> u.slab().orElse(Pick.NOTHING);
      case JOINTS -> u.joint().or(u::slab).orElse(Pick.NOTHING);
      case ORDER, SHEETS -> Pick.NOTHING;
    };
  }

  private Optional<Pick> corner() {
    Pick best = null;
    double near = CORNER * pixel;
    for (Slab s : plan.slabs()) {
      for (int ring = Ref.OUTLINE; ring < s.openings().size(); ring++) {
        Outline o = ring == Ref.OUTLINE ? s.outline() : s.openings().get(ring).outline();
        for (int i = 0; i < o.vertices().size(); i++) {
          double d = o.vertices().get(i).at().distance(at);
          if (d <= near) {
            near = d;
            best = new Pick.AtCorner(new Ref(s.id(), ring, i));
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private Optional<Pick> edge() {
    Pick best = null;
    double near = LINE * pixel;
    for (Slab s : plan.slabs()) {
      for (int ring = Ref.OUTLINE; ring < s.openings().size(); ring++) {
        Outline o = ring == Ref.OUTLINE ? s.outline() : s.openings().get(ring).outline();
        for (int i = 0; i < o.vertices().size(); i++) {
          Edge e = o.ring().edges().get(i);
          double d = e.distance(at);
          if (d <= near) {
            near = d;
            best = new Pick.AtEdge(new Ref(s.id(), ring, i));
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /** A mark is drawn just inside its side, and so is taken hold of there; the side beyond it. */
  private Optional<Pick> feature() {
    for (Slab s : plan.slabs()) {
      for (int ring = Ref.OUTLINE; ring < s.openings().size(); ring++) {
        Outline o = ring == Ref.OUTLINE ? s.outline() : s.openings().get(ring).outline();
        for (int i = 0; i < o.vertices().size(); i++) {
          Ref ref = new Ref(s.id(), ring, i);
          Optional<Pick> found = featureOf(s, ref, o.ring().edges().get(i));
          if (found.isPresent()) {
            return found;
          }
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Pick> featureOf(Slab slab, Ref ref, Edge edge) {
    double off = edge.distance(at);
    if (off < MARK_NEAR * pixel || off > MARK_FAR * pixel || !slab.region().contains(at)) {
      return Optional.empty();
    }
    double along = edge.nearest(at) * edge.length();
    for (int n = 0; ; n++) {
      Pick.AtFeature pick = new Pick.AtFeature(ref, n);
      Optional<Feature> f = Picks.feature(plan, pick);
      if (f.isEmpty()) {
        return Optional.empty();
      }
      double end = LINE * pixel;
      if (along >= f.get().from() - end && along <= f.get().to() + end) {
        return Optional.of(pick);
      }
    }
  }

  private Optional<Pick> given() {
    for (int i = 0; i < plan.given().size(); i++) {
      if (plan.given().get(i).path().distance(at) <= LINE * pixel) {
        return Optional.of(new Pick.AtGiven(i));
      }
    }
    return Optional.empty();
  }

  private Optional<Pick> zone() {
    for (Slab s : plan.slabs()) {
      for (int i = 0; i < s.keepClear().size(); i++) {
        Ring ring = s.keepClear().get(i).outline().ring();
        if (ring.contains(at) || ring.distance(at) <= LINE * pixel) {
          return Optional.of(new Pick.AtZone(s.id(), i));
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Pick> joint() {
    Pick best = null;
    double near = LINE * pixel;
    for (Slab s : plan.slabs()) {
      for (Joint j : s.joints()) {
        // A joint to cut goes before the filler it ends at.
        double d = j.path().distance(at) + (j.kind() == JointKind.CONTRACTION ? 0 : pixel);
        if (d <= near && isInSight(s.id(), j)) {
          near = d;
          best = new Pick.AtJoint(s.id(), j.id());
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /**
   * Whether a joint of the plan is drawn: a first answer stands over the joints from before, which
   * are in the plan until a better one comes.
   */
  private boolean isInSight(String slab, Joint joint) {
    return desk.laying()
        .laid()
        .filter(Laid::isFirst)
        .flatMap(l -> l.layout().slab(slab))
        .map(s -> s.joints().stream().anyMatch(j -> j.path().equals(joint.path())))
        .orElse(true);
  }

  private Optional<Pick> fixed() {
    return plan.fixed().stream()
        .filter(f -> isOn(f))
        .findFirst()
        .map(f -> new Pick.AtFixed(f.id()));
  }

  private boolean isOn(FixedObject f) {
    return f.shape().ring().contains(at) || f.shape().ring().distance(at) <= LINE * pixel;
  }

  private Optional<Pick> opening() {
    for (Slab s : plan.slabs()) {
      for (int i = 0; i < s.openings().size(); i++) {
        if (s.openings().get(i).outline().ring().contains(at)) {
          return Optional.of(new Pick.AtOpening(s.id(), i));
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Pick> photo() {
    return plan.photo().filter(p -> p.ring().contains(at)).map(p -> new Pick.AtPhoto());
  }

  private Optional<Pick> slab() {
    return plan.slabs().stream()
        .filter(s -> s.outline().ring().contains(at))
        .findFirst()
        .map(s -> new Pick.WholeSlab(s.id()));
  }
}
