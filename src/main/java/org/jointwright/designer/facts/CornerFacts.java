package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.app.CornerTips;
import org.jointwright.designer.shaping.SideLength;
import org.jointwright.designer.shaping.SideShape;
import org.jointwright.designer.sketch.TwoWays;
import org.jointwright.designer.sketch.Vocabulary;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Soundness;
import org.jointwright.measure.Length;
import org.jointwright.plan.LetteredCorner;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Outline;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.jointwright.text.Words;

/** The facts of a corner: the sides that meet there, and its angle. */
record CornerFacts(Desk desk, Ref corner, Words words) {
  /** What is no farther off, inches, is said to be at the place itself. */
  private static final double AT = 0.01;

  Optional<Facts> facts() {
    return Picks.outline(desk.plan(), corner)
        .filter(o -> corner.index() < o.vertices().size())
        .map(this::facts);
  }

  private Facts facts(Outline outline) {
    List<Edge> edges = outline.ring().edges();
    int n = edges.size();
    Edge before = edges.get((corner.index() + n - 1) % n);
    Edge after = edges.get(corner.index());
    Point at = after.start();
    Names names = new Names(desk.plan(), words);
    List<Row> rows = new ArrayList<>();
    int last = (corner.index() + n - 1) % n;
    rows.add(length("corner-before", names, before, last));
    rows.add(length("corner-after", names, after, corner.index()));
    rows.addAll(place(at));
    double turn =
        Math.toDegrees(
            Math.atan2(
                before.direction(1).cross(after.direction(0)),
                before.direction(1).dot(after.direction(0))));
    rows.add(
        new Row.Shown(
            "corner-angle",
            words.say("window.corner.angle"),
            words.say("window.degrees", Math.round(180 - turn))));
    List<Deed> deeds = new ArrayList<>();
    for (int side : List.of(last, corner.index())) {
      EdgeFacts.otherLength(desk, new Ref(corner.slab(), corner.ring(), side), words)
          .ifPresent(deeds::add);
    }
    deeds.addAll(EdgeFacts.shiftedBack(desk, corner.slab(), words));
    List<String> said = new ArrayList<>(EdgeFacts.shifted(desk, corner.slab(), words));
    SideShape.most(desk.plan(), corner).ifPresent(most -> rows.add(rounded(most)));
    CornerTip tip = new CornerTip(desk.plan(), corner, words);
    if (corner.ring() == Ref.OUTLINE && turn > 0) {
      rows.add(tip.row());
      tip.offer().ifPresent(deeds::add);
      if (CornerTips.isWorthIt(180 - turn)) {
        said.add(words.say("window.corner.sharp"));
      }
    }
    if (n > 3) {
      deeds.add(Deed.of("take-out", words.say("window.deed.takeOut"), CornerFacts.without(corner)));
    }
    said.add(words.say("window.corner.drag"));
    return Facts.saying(names.corner(at), words.say("window.kind.corner"), rows, deeds, said);
  }

  private Row length(String id, Names names, Edge e, int index) {
    String value = words.print(Length.inches(e.length()));
    Ref side = new Ref(corner.slab(), corner.ring(), index);
    return e instanceof Segment
        ? new Row.Typed(
            id,
            names.side(e),
            value,
            t ->
                d ->
                    SideLength.set(d, side, Figures.side(t, d))
                        .orElseThrow(() -> new BadFigure("window.figure.cannot")))
        : new Row.Shown(id, names.side(e), value);
  }

  /** How far to the right of the job's first corner it stands, and how far up from it. */
  private List<Row> place(Point at) {
    List<LetteredCorner> corners = Lettering.of(desk.plan()).corners();
    return corners.stream()
        .filter(c -> c.at().distance(at) > Lettering.SAME_PLACE)
        .findFirst()
        .map(
            c -> {
              Point from = at.minus(c.at());
              return List.of(
                  offset("corner-right", TwoWays.LEVEL, c, from.x(), new Point(1, 0)),
                  offset("corner-up", TwoWays.PLUMB, c, from.y(), new Point(0, 1)));
            })
        .orElse(List.of());
  }

  private Row offset(String id, TwoWays ways, LetteredCorner from, double now, Point way) {
    boolean isBack = now < -AT;
    return new Row.Typed(
        id,
        words.say(key(ways, isBack), from.letter()),
        words.print(Length.inches(Math.abs(now))),
        t ->
            d -> {
              Point to =
                  Picks.vertex(d.plan(), corner)
                      .orElseThrow()
                      .plus(way.times(far(ways.read(t, isBack, new Vocabulary(words)), d) - now));
              Desk moved = d.edited(new SlabEdit.MoveCorner(corner, to));
              if (!Soundness.holds(moved.plan(), corner.slab())) {
                throw new BadFigure("window.figure.cannot");
              }
              return moved;
            });
  }

  private static String key(TwoWays ways, boolean isBack) {
    return switch (ways) {
      case LEVEL -> isBack ? "window.corner.left" : "window.corner.right";
      case PLUMB -> isBack ? "window.corner.down" : "window.corner.up";
    };
  }

  /** How far it is, below zero to the left and down; a minus turns it round. */
  private static double far(TwoWays.Measured typed, Desk desk) {
    double inches = Figures.way(typed.figure(), desk).inches();
    return typed.isBack() ? -inches : inches;
  }

  private Row rounded(double most) {
    String none = words.say("window.corner.notRounded");
    return new Row.Typed(
        "corner-rounded",
        words.say("window.corner.rounded"),
        none,
        t ->
            d ->
                t.isBlank() || t.strip().equals(none)
                    ? d
                    : SideShape.rounded(d, corner, Figures.side(t, d).inches())
                        .orElseThrow(
                            () ->
                                new BadFigure(
                                    "window.figure.rounded", Length.inches(Math.floor(most))))
                        .picking(new Pick.AtEdge(corner)));
  }

  static java.util.function.UnaryOperator<Desk> without(Ref corner) {
    return d -> {
      Desk changed = d.edited(new SlabEdit.RemoveCorner(corner));
      return Soundness.holds(changed.plan(), corner.slab())
          ? changed.picking(new Pick.WholeSlab(corner.slab()))
          : d;
    };
  }
}
