package org.jointwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.joint.FillerWidth;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Ring;

/** A layout as marks: grounds, panels, joints by their kind, outlines, filler, fixed objects. */
public final class PlanDrawing {
  private PlanDrawing() {}

  /** The marks of {@code layout} in {@code view}, from below upwards. */
  public static Mark.Group of(Layout layout, View view, Pens pens) {
    return of(layout, view, pens, Box.ALL);
  }

  /**
   * The marks of {@code layout} in {@code view}, from below upwards. Joints that cannot be seen are
   * left out, and so is the hatching of their filler.
   *
   * @param seen what is seen of the medium, with room round it for the width of a mark
   */
  public static Mark.Group of(Layout layout, View view, Pens pens, Box seen) {
    return new Mark.Group(
        "plan",
        "",
        List.of(
            group("grounds", Grounds.of(layout.plan(), view, pens)),
            group("panels", panels(layout, view)),
            group("walls", Grounds.walls(layout.plan(), view, pens)),
            group("zones", UserMarks.zones(layout.plan(), view, pens)),
            group("features", UserMarks.features(layout.plan(), view, pens)),
            group("given", UserMarks.given(layout.plan(), view, pens)),
            group("cut-joints", joints(layout, view, new Drawn(pens, seen), JointKind.CONTRACTION)),
            group("outlines", outlines(layout, view, pens)),
            group(
                "formed-joints",
                joints(layout, view, new Drawn(pens, seen), JointKind.CONSTRUCTION)),
            group("filler", joints(layout, view, new Drawn(pens, seen), JointKind.ISOLATION)),
            group("fixed", fixed(layout, view, pens))));
  }

  private static Mark.Group group(String name, List<Mark> marks) {
    return new Mark.Group(name, "", marks);
  }

  private static List<Mark> panels(Layout layout, View view) {
    List<Mark> marks = new ArrayList<>();
    for (SlabLayout slab : layout.slabs()) {
      List<Ring> whole = new ArrayList<>(List.of(view.on(slab.slab().outline().ring())));
      slab.slab().openings().forEach(o -> whole.add(view.on(o.outline().ring())));
      marks.add(new Mark.Area(whole, Role.PANEL));
      for (BoxOut b : slab.boxOuts()) {
        marks.add(Mark.Area.of(view.on(b.outline().ring()), Role.PAPER));
      }
    }
    return marks;
  }

  private static List<Mark> outlines(Layout layout, View view, Pens pens) {
    List<Mark> marks = new ArrayList<>();
    for (SlabLayout s : layout.slabs()) {
      Slab slab = s.slab();
      marks.add(line(slab.outline().ring(), view, pens));
      for (Opening o : slab.openings()) {
        marks.add(line(o.outline().ring(), view, pens));
      }
    }
    return marks;
  }

  private static Mark line(Ring ring, View view, Pens pens) {
    return Mark.Line.of(view.on(new Path(ring.edges())), pens.outline(), Role.OUTLINE);
  }

  /** What joints are drawn with, and how far. */
  private record Drawn(Pens pens, Box seen) {}

  private static List<Mark> joints(Layout layout, View view, Drawn drawn, JointKind kind) {
    List<Mark> marks = new ArrayList<>();
    Box within = view.back(drawn.seen());
    for (SlabLayout slab : layout.slabs()) {
      for (Joint j : slab.joints()) {
        if (j.kind() == kind && meets(j.path(), within)) {
          double filler =
              kind == JointKind.ISOLATION ? FillerWidth.of(j, slab.slab()) * view.scale() : 0;
          List<Mark> all =
              JointMarks.joint(kind, view.on(j.path()), filler, drawn.pens(), drawn.seen());
          marks.add(group(name(slab, j), all));
        }
      }
    }
    return marks;
  }

  private static boolean meets(Path path, Box box) {
    for (Edge e : path.edges()) {
      if (e.box().meets(box)) {
        return true;
      }
    }
    return false;
  }

  private static String name(SlabLayout slab, Joint joint) {
    return "joint-" + slab.slab().id() + "-" + joint.id();
  }

  private static List<Mark> fixed(Layout layout, View view, Pens pens) {
    List<Mark> marks = new ArrayList<>();
    for (FixedObject f : layout.plan().fixed()) {
      marks.addAll(fixed(f, view, pens));
    }
    return marks;
  }

  /** The lines that the user's own words put on the plan besides: no text should touch them. */
  public static List<Mark.Line> told(Plan plan, View view, Pens pens) {
    List<Mark> marks = new ArrayList<>(UserMarks.zones(plan, view, pens));
    marks.addAll(UserMarks.features(plan, view, pens));
    marks.addAll(UserMarks.given(plan, view, pens));
    return marks.stream()
        .flatMap(
            m ->
                m instanceof Mark.Line line
                    ? java.util.stream.Stream.of(line)
                    : java.util.stream.Stream.<Mark.Line>empty())
        .toList();
  }

  /** The marks of one fixed object. */
  public static List<Mark> fixed(FixedObject object, View view, Pens pens) {
    return FixedMarks.of(object.kind(), view.on(object.shape().ring()), pens);
  }

  /**
   * A nailhead on each locked joint: for whoever moves joints, not for the crew, to whom a ring by
   * a post on paper is another post.
   */
  public static Mark.Group locked(Layout layout, View view, Pens pens) {
    List<Mark> marks = new ArrayList<>();
    for (SlabLayout slab : layout.slabs()) {
      for (Joint j : slab.joints()) {
        if (j.locked()) {
          marks.addAll(JointMarks.nailhead(view.on(j.path().middle()), pens));
        }
      }
    }
    return group("locked", marks);
  }
}
