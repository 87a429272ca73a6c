package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.shaping.SideShape;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Step;
import org.jointwright.designer.state.Things;
import org.jointwright.designer.state.Viewport;
import org.jointwright.drawing.JointMarks;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Pens;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.drawing.Weight;
import org.jointwright.joint.Layout;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/** What is picked or held, with its tape. */
public final class HoldMarks {
  /** What the handle in the middle of a side takes, pixels. */
  private static final double HANDLE = 10;

  private final Desk desk;
  private final Known known;
  private final FlagMarks flags;
  private final Words words;
  private final Viewport viewport;
  private final View view;
  private final List<Mark> marks = new ArrayList<>();

  private HoldMarks(Desk desk, Known known, FlagMarks flags, Words words) {
    this.desk = desk;
    this.known = known;
    this.flags = flags;
    this.words = words;
    viewport = desk.viewport();
    view = viewport.view();
  }

  /**
   * What is picked or held.
   *
   * @param known what is known of the desk’s plan
   * @param flags those of the desk, past which tapes run
   */
  public static List<Mark> of(Desk desk, Known known, FlagMarks flags, Words words) {
    HoldMarks h = new HoldMarks(desk, known, flags, words);
    h.outlineMeanwhile();
    desk.hand()
        .hold()
        .ifPresentOrElse(
            hold -> {
              switch (hold) {
                case Hold.HeldJoint joint -> h.joint(joint);
                case Hold.HeldCorner corner -> h.corner(corner);
                case Hold.HeldFixed fixed ->
                    h.marks.addAll(ReadyMarks.tapes(desk, fixed.id(), words));
                case Hold.HeldAddition addition ->
                    h.marks.addAll(ReadyMarks.of(desk, addition, words));
                case Hold.HeldFeature feature -> h.picked();
                case Hold.HeldGround ground -> h.picked();
                case Hold.HeldThings things -> h.things(things);
                case Hold.HeldSide side -> h.side(side);
                case Hold.HeldBow bow -> h.picked();
                case Hold.HeldArea area -> h.area(area);
                case Hold.HeldShape shape ->
                    h.marks.addAll(ReadyMarks.of(shape, h.viewport, words));
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
                    JointTape tape = tape();
                    List<Mark> figures = tape.picked(pick.slab(), j);
                    List<Box> taken = new ArrayList<>(flags.cloths());
                    taken.addAll(tape.figures());
                    desk.laying()
                        .whyHere(pick)
                        .ifPresent(
                            r ->
                                marks.addAll(
                                    CrackMarks.of(r.cracks(), j.path(), taken, view, words)));
                    marks.addAll(figures);
                  });
      case Pick.AtEdge pick -> Picks.edge(desk.plan(), pick.edge()).ifPresent(this::picked);
      case Pick.AtCorner pick -> sides(pick.corner(), 22);
      case Pick.AtFeature pick -> marks.addAll(FeatureTape.of(desk.plan(), pick, viewport, words));
      default -> {}
    }
  }

  private JointTape tape() {
    return new JointTape(desk, known, flags, words);
  }

  /** Things that move: where they are, and how far they have come. */
  private void things(Hold.HeldThings held) {
    marks.addAll(PickMarks.picked(desk.plan(), desk.picked(), view));
    marks.addAll(Amiss.said(known, viewport, words));
    held.pencil()
        .ifPresent(p -> p.guides().forEach(g -> marks.addAll(GuideMarks.of(g, viewport, words))));
    Things.box(desk.plan(), held.things())
        .ifPresent(
            b -> {
              Point top = view.on(new Point((b.minX() + b.maxX()) / 2, b.maxY()));
              String come =
                  words.say(
                      "window.tape.come",
                      words.print(Length.inches(Math.abs(held.moved().x()))),
                      words.say(
                          held.moved().x() < 0
                              ? "window.tape.leftwards"
                              : "window.tape.rightwards"),
                      words.print(Length.inches(Math.abs(held.moved().y()))),
                      words.say(held.moved().y() < 0 ? "window.tape.down" : "window.tape.up"));
              marks.addAll(
                  SideTape.figure(
                      top,
                      new Point(0, -1),
                      come,
                      18,
                      Weight.BOLD,
                      Role.STRING,
                      viewport.written()));
            });
  }

  /** A side that is pushed: how long the sides beside it have become. */
  private void side(Hold.HeldSide held) {
    Ref edge = held.edge();
    marks.addAll(PickMarks.picked(desk.plan(), new Pick.AtEdge(edge), view));
    marks.addAll(Amiss.said(known, viewport, words));
    held.guide().ifPresent(g -> marks.addAll(GuideMarks.of(g, viewport, words)));
    int n = Picks.outline(desk.plan(), edge).map(o -> o.vertices().size()).orElse(0);
    if (n > 0) {
      for (int i : new int[] {(edge.index() + n - 1) % n, (edge.index() + 1) % n}) {
        Picks.edge(desk.plan(), new Ref(edge.slab(), edge.ring(), i))
            .ifPresent(e -> marks.addAll(SideTape.beside(e, viewport, words, 22)));
      }
    }
  }

  private void area(Hold.HeldArea area) {
    Point a = view.on(area.from());
    Point b = view.on(area.to());
    Box box = Box.of(a, b);
    Path round = new Path(Rings.box(box.minX(), box.minY(), box.width(), box.height()).edges());
    marks.addAll(PickMarks.picked(desk.plan(), desk.picked(), view));
    if (box.width() > 0 && box.height() > 0) {
      marks.add(new Mark.Line(round, 1.6, List.of(6.0, 4.0), Role.SELECTED));
    }
  }

  private void picked(Edge side) {
    marks.addAll(SideTape.beside(side, viewport, words, 22));
    if (desk.sight().step() != Step.OUTLINE) {
      return;
    }
    if (view.on(side).length() > 4 * HANDLE) {
      marks.addAll(PickMarks.handle(side, view));
    }
    if (side instanceof Arc arc) {
      double bulge = SideShape.bulge(side);
      String bow =
          words.say(
              bulge < 0 ? "window.tape.bowIn" : "window.tape.bowOut",
              words.print(Length.inches(Math.abs(bulge))),
              words.print(Length.inches(arc.radius())));
      Point in = view.heading(SideShape.out(side)).times(-1);
      // Where the side's own length has no room outside, it stands inside first.
      boolean isBelow = SideTape.isInside(side, viewport, words, 22);
      Point at = view.on(side.at(0.5)).plus(in.times(2 * HANDLE + (isBelow ? 36 : 0)));
      marks.addAll(
          SideTape.figure(at, in, bow, 15, Weight.REGULAR, Role.STRING, viewport.written()));
    }
  }

  private void corner(Hold.HeldCorner held) {
    marks.addAll(PickMarks.picked(desk.plan(), new Pick.AtCorner(held.corner()), view));
    marks.addAll(Amiss.said(known, viewport, words));
    sides(held.corner(), 22);
    held.pencil().guides().forEach(g -> marks.addAll(GuideMarks.of(g, viewport, words)));
  }

  private void sides(Ref corner, double size) {
    Optional<Outline> outline = Picks.outline(desk.plan(), corner);
    if (outline.isPresent() && corner.index() < outline.get().vertices().size()) {
      List<Edge> edges = outline.get().ring().edges();
      int n = edges.size();
      marks.addAll(SideTape.beside(edges.get((corner.index() + n - 1) % n), viewport, words, size));
      marks.addAll(SideTape.beside(edges.get(corner.index()), viewport, words, size));
    }
  }

  private void joint(Hold.HeldJoint held) {
    Joint now = held.now();
    marks.add(new Mark.Line(view.on(held.was()), 1.4, List.of(4.0, 4.0), Role.QUIET_TEXT));
    marks.addAll(PickMarks.line(now.path(), view, true, true));
    marks.addAll(JointMarks.nailhead(view.on(now.path().middle()), Pens.SCREEN));
    marks.addAll(tape().held(held));
    held.guide().ifPresent(g -> marks.addAll(GuideMarks.of(g, viewport, words)));
  }
}
