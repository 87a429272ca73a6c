package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.text.Words;

/** What is picked or held, with its tape. */
final class HoldMarks {
  private final Desk desk;
  private final Words words;
  private final View view;
  private final List<Mark> marks = new ArrayList<>();

  private HoldMarks(Desk desk, Words words) {
    this.desk = desk;
    this.words = words;
    view = desk.viewport().view();
  }

  static List<Mark> of(Desk desk, Words words) {
    HoldMarks h = new HoldMarks(desk, words);
    h.outlineMeanwhile();
    desk.hand()
        .hold()
        .ifPresentOrElse(
            hold -> {
              switch (hold) {
                case Hold.HeldJoint joint -> h.joint(joint);
                case Hold.HeldCorner corner -> h.corner(corner);
                case Hold.HeldFixed fixed -> h.picked();
                case Hold.HeldFeature feature -> h.picked();
                case Hold.HeldGround ground -> h.picked();
              }
            },
            h::picked);
    return h.marks;
  }

  /** The outline as it is now, while the joints of an older one are still in sight. */
  private void outlineMeanwhile() {
    Plan now = desk.plan();
    Optional<Layout> last = desk.laying().laid().map(l -> l.layout());
    if (last.isEmpty()) {
      return;
    }
    for (var slab : now.slabs()) {
      boolean isOld =
          last.get()
              .slab(slab.id())
              .filter(s -> !s.slab().outline().equals(slab.outline()))
              .isPresent();
      if (isOld) {
        Path path = new Path(slab.outline().ring().edges());
        marks.add(Mark.Line.of(view.on(path), 2.2, Role.SELECTED));
      }
    }
  }

  private void picked() {
    switch (desk.picked()) {
      case Pick.AtJoint pick ->
          Picks.joint(desk.plan(), pick)
              .ifPresent(
                  j -> {
                    desk.laying()
                        .whyHere(pick)
                        .ifPresent(r -> marks.addAll(CrackMarks.of(r, view, words)));
                    marks.addAll(JointTape.picked(desk, pick.slab(), j, words));
                  });
      case Pick.AtEdge pick ->
          Picks.edge(desk.plan(), pick.edge())
              .ifPresent(e -> marks.addAll(SideTape.beside(e, view, words, 22)));
      case Pick.AtCorner pick -> sides(pick.corner(), 22);
      case Pick.AtFeature pick -> marks.addAll(FeatureTape.of(desk.plan(), pick, view, words));
      default -> {}
    }
  }

  private void corner(Hold.HeldCorner held) {
    marks.addAll(PickMarks.picked(desk.plan(), new Pick.AtCorner(held.corner()), view));
    sides(held.corner(), 22);
    held.pencil().guides().forEach(g -> marks.addAll(GuideMarks.of(g, view, words)));
  }

  private void sides(Ref corner, double size) {
    Optional<Outline> outline = Picks.outline(desk.plan(), corner);
    if (outline.isPresent() && corner.index() < outline.get().vertices().size()) {
      List<Edge> edges = outline.get().ring().edges();
      int n = edges.size();
      marks.addAll(SideTape.beside(edges.get((corner.index() + n - 1) % n), view, words, size));
      marks.addAll(SideTape.beside(edges.get(corner.index()), view, words, size));
    }
  }

  private void joint(Hold.HeldJoint held) {
    Joint now = held.now();
    marks.add(new Mark.Line(view.on(held.was()), 1.4, List.of(4.0, 4.0), Role.QUIET_TEXT));
    marks.addAll(PickMarks.line(now.path(), view, true, true));
    marks.addAll(JointTape.held(desk, held, words));
  }
}
