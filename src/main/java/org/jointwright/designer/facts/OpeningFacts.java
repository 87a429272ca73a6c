package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jointwright.designer.shaping.SideOff;
import org.jointwright.designer.shaping.Whole;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Soundness;
import org.jointwright.measure.Length;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.Thing;
import org.jointwright.plan.edit.Together;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/** The facts of an opening: its size, and how far from the sides its near edge stands. */
record OpeningFacts(Desk desk, Pick.AtOpening pick, Words words) {
  /** So many points stand for a bow where it is measured from. */
  private static final int BOWED = 64;

  Optional<Facts> facts() {
    return desk.plan()
        .slab(pick.slab())
        .filter(s -> pick.opening() < s.openings().size())
        .map(s -> facts(s, s.openings().get(pick.opening())));
  }

  private Facts facts(Slab slab, Opening opening) {
    List<Row> rows = new ArrayList<>();
    List<Point> rim = new ArrayList<>();
    for (Edge e : opening.outline().ring().edges()) {
      for (int k = 0; k < (e instanceof Arc ? BOWED : 1); k++) {
        rim.add(e.at((double) k / BOWED));
      }
    }
    rows.addAll(
        new FromSides(desk.plan(), slab, words)
            .rows("opening", "window.from.edge", rim, this::moved));
    rows.add(size("opening-wide", "window.opening.wide", slab, rim, true));
    rows.add(size("opening-deep", "window.opening.deep", slab, rim, false));
    return Facts.saying(
        words.say("window.opening.title"),
        words.say("window.kind.opening"),
        rows,
        List.of(
            Deed.inMenu(
                "copy",
                words.say("window.deed.copy"),
                d -> Whole.copied(d, List.of(new Thing.AnOpening(pick.slab(), pick.opening())))),
            Deed.of(
                "take-out",
                words.say("window.deed.takeOut"),
                d -> d.edited(new SlabEdit.RemoveOpening(pick.slab(), pick.opening())))),
        List.of());
  }

  /** A size: the opening stays as far from the nearest sides as it was. */
  private Row size(String id, String key, Slab slab, List<Point> rim, boolean wide) {
    Box box = rim.stream().map(p -> Box.of(p, p)).reduce(Box::with).orElseThrow();
    double now = wide ? box.width() : box.height();
    return new Row.Typed(
        id,
        words.say(key),
        words.print(Length.inches(now)),
        t ->
            d -> {
              double factor = Figures.side(t, d).inches() / now;
              UnaryOperator<Point> to =
                  p ->
                      wide
                          ? new Point(box.minX() + (p.x() - box.minX()) * factor, p.y())
                          : new Point(p.x(), box.minY() + (p.y() - box.minY()) * factor);
              Point by =
                  FromSides.held(
                      slab, SideOff.eachWay(slab, rim), rim.stream().map(to).toList(), List.of());
              return each(d, p -> to.apply(p).plus(by));
            });
  }

  private Desk moved(Desk d, Point by) {
    return each(d, p -> p.plus(by));
  }

  /** Every corner of the opening put elsewhere, refused where it would leave the slab. */
  private Desk each(Desk d, UnaryOperator<Point> to) {
    Slab slab = d.plan().slab(pick.slab()).orElseThrow();
    Outline outline = slab.openings().get(pick.opening()).outline();
    List<Edit> moves = new ArrayList<>();
    for (int i = 0; i < outline.vertices().size(); i++) {
      Vertex v = outline.vertices().get(i);
      Point at = to.apply(v.at());
      if (!slab.outline().ring().contains(at)) {
        throw new BadFigure("window.figure.outside");
      }
      moves.add(new SlabEdit.MoveCorner(new Ref(pick.slab(), pick.opening(), i), at));
    }
    Desk moved = d.edited(new Together(moves));
    if (!Soundness.holds(moved.plan(), pick.slab())) {
      throw new BadFigure("window.figure.touching");
    }
    return moved.picking(pick);
  }
}
