package org.jointwright.designer.hand;

import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.JointSlide;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Pointer;
import org.jointwright.designer.state.Soundness;
import org.jointwright.plan.Joint;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.FixedEdit;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.plan.edit.SlabEdit;
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
  public static Desk by(Desk desk, Point way, int steps) {
    double unit = Pointer.wholeStep(desk.plan());
    Point by = way.times(unit * steps);
    return switch (desk.picked()) {
      case Pick.AtCorner c -> corner(desk, c, by);
      case Pick.AtFixed f -> desk.goingOn(new FixedEdit.Move(f.id(), by));
      case Pick.WholeSlab s -> desk.goingOn(new SlabEdit.MoveSlab(s.slab(), by));
      case Pick.AtJoint j -> joint(desk, j, by);
      case Pick.Nothing n -> desk;
      case Pick.AtEdge e -> desk;
      case Pick.AtOpening o -> desk;
      case Pick.AtFeature f -> desk;
      case Pick.AtZone z -> desk;
      case Pick.AtGiven g -> desk;
    };
  }

  private static Desk corner(Desk desk, Pick.AtCorner pick, Point by) {
    Point to = Picks.vertex(desk.plan(), pick.corner()).orElseThrow().plus(by);
    Edit edit = new SlabEdit.MoveCorner(pick.corner(), to);
    return Soundness.holds(edit.applyTo(desk.plan()), pick.corner().slab())
        ? desk.goingOn(edit)
        : desk;
  }

  private static Desk joint(Desk desk, Pick.AtJoint pick, Point by) {
    Optional<Joint> joint = Picks.joint(desk.plan(), pick).filter(JointSlide::canSlide);
    Optional<Path> to = joint.flatMap(j -> JointSlide.by(desk.plan(), pick.slab(), j, by));
    return to.filter(p -> !p.equals(joint.orElseThrow().path()))
        .map(p -> desk.edited(new JointEdit.Move(pick.slab(), pick.joint(), p)))
        .orElse(desk);
  }
}
