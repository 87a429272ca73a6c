package org.jointwright.designer.hand;

import java.util.Optional;
import org.jointwright.designer.shaping.SharedSide;
import org.jointwright.designer.shaping.SideShape;
import org.jointwright.designer.shaping.Whole;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.JointSlide;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Pointer;
import org.jointwright.designer.state.Soundness;
import org.jointwright.designer.state.Things;
import org.jointwright.plan.Feature;
import org.jointwright.plan.Joint;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.FeatureEdit;
import org.jointwright.plan.edit.FixedEdit;
import org.jointwright.plan.edit.PhotoEdit;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Motion;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** Moves what is picked a little, as the arrow keys do. */
public final class Nudge {
  private Nudge() {}

  /**
   * The desk with what is picked moved by one inch, or one centimetre, times {@code steps}.
   *
   * @param way where to, up the paper positive
   */
  public static Desk by(Desk desk, Point way, double steps) {
    double unit = Pointer.wholeStep(desk.plan());
    Point by = way.times(unit * steps);
    return switch (desk.picked()) {
      case Pick.AtCorner c -> corner(desk, c, by);
      case Pick.AtFixed f -> desk.goingOn(new FixedEdit.Move(f.id(), by));
      case Pick.WholeSlab s -> desk.goingOn(new SlabEdit.MoveSlab(s.slab(), by));
      case Pick.AtJoint j -> joint(desk, j, by);
      case Pick.Nothing n -> desk;
      case Pick.AtEdge e -> side(desk, e, by);
      case Pick.AtFeature f -> feature(desk, f, by);
      case Pick.AtOpening o -> things(desk, by);
      case Pick.AtZone z -> things(desk, by);
      case Pick.AtGiven g -> things(desk, by);
      case Pick.Several s -> things(desk, by);
      case Pick.AtPhoto p -> photo(desk, by);
      case Pick.Scaling s -> desk;
    };
  }

  private static Desk photo(Desk desk, Point by) {
    return desk.plan().photo().map(p -> desk.goingOnOnly(PhotoEdit.of(p.movedBy(by)))).orElse(desk);
  }

  private static Desk corner(Desk desk, Pick.AtCorner pick, Point by) {
    Point to = Picks.vertex(desk.plan(), pick.corner()).orElseThrow().plus(by);
    Edit edit = new SlabEdit.MoveCorner(pick.corner(), to);
    return Soundness.holds(edit.applyTo(desk.plan()), pick.corner().slab())
        ? desk.goingOn(edit)
        : desk;
  }

  private static Desk things(Desk desk, Point by) {
    return Whole.goingOn(desk, Things.of(desk.picked()), Motion.by(by)).orElse(desk);
  }

  /** A side goes out or in by as much of the way as leads there, with those along it. */
  private static Desk side(Desk desk, Pick.AtEdge pick, Point by) {
    return Picks.edge(desk.plan(), pick.edge())
        .map(e -> Math.rint(by.dot(SideShape.out(e)) * 1e6) / 1e6)
        .filter(out -> out != 0)
        .flatMap(
            out ->
                SharedSide.pushed(
                    desk, pick.edge(), SharedSide.along(desk.plan(), pick.edge()), out, true))
        .map(d -> d.picking(pick))
        .orElse(desk);
  }

  /** A mark goes along its side by a whole step where any of the way leads along. */
  private static Desk feature(Desk desk, Pick.AtFeature pick, Point by) {
    Edge edge = Picks.edge(desk.plan(), pick.edge()).orElseThrow();
    Feature now = Picks.feature(desk.plan(), pick).orElseThrow();
    double along = by.dot(edge.direction(0.5));
    if (Math.abs(along) < by.norm() / 2) {
      return desk;
    }
    double step = Math.copySign(by.norm(), along);
    double wide = now.to() - now.from();
    double from = Math.clamp(now.from() + step, 0, Math.max(0, edge.length() - wide));
    Feature to = new Feature(now.kind(), from, from + wide, now.kept());
    return desk.goingOn(new FeatureEdit.Change(pick.edge(), pick.feature(), to)).picking(pick);
  }

  private static Desk joint(Desk desk, Pick.AtJoint pick, Point by) {
    Optional<Joint> joint = Picks.joint(desk.plan(), pick).filter(JointSlide::canSlide);
    Optional<Path> to = joint.flatMap(j -> JointSlide.by(desk.plan(), pick.slab(), j, by));
    return to.filter(p -> !p.equals(joint.orElseThrow().path()))
        .map(p -> desk.editedOnly(JointSlide.move(desk.plan(), pick, joint.orElseThrow(), p)))
        .orElse(desk);
  }
}
