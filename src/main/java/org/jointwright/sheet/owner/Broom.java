package org.jointwright.sheet.owner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Slab.Finish;
import org.jointwright.shape.Box;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/** The strokes of a broom over a slab, across its long side: they say concrete at a glance. */
final class Broom {
  /** How wide a stroke is, and how far apart two are; millimetres. */
  private static final double WIDTH = 0.12;

  private static final double APART = 1.3;

  private Broom() {}

  static Mark.Group over(Plan plan, View view) {
    List<Mark> strokes = new ArrayList<>();
    plan.slabs().stream().filter(Broom::isBroomed).forEach(s -> over(s, view, strokes));
    return new Mark.Group("broom", "", strokes);
  }

  /** Whether a broom is dragged over it; where nobody has said how it is finished, none is. */
  private static boolean isBroomed(Slab slab) {
    return slab.finish().filter(f -> f == Finish.BROOM || f == Finish.COLORED).isPresent();
  }

  private static void over(Slab slab, View view, List<Mark> strokes) {
    List<Ring> rings = new ArrayList<>();
    rings.add(view.on(slab.outline().ring()));
    for (Opening o : slab.openings()) {
      rings.add(view.on(o.outline().ring()));
    }
    slab.boxOuts().forEach(b -> rings.add(view.on(b.outline().ring())));
    Box box = rings.getFirst().box();
    boolean down = box.width() >= box.height();
    double from = down ? box.minX() : box.minY();
    double to = down ? box.maxX() : box.maxY();
    for (double at = from + APART / 2; at < to; at += APART) {
      Segment line =
          down
              ? new Segment(new Point(at, box.minY() - 1), new Point(at, box.maxY() + 1))
              : new Segment(new Point(box.minX() - 1, at), new Point(box.maxX() + 1, at));
      within(line, rings, strokes);
    }
  }

  /** The pieces of a line that lie inside one ring and in none of the others. */
  private static void within(Segment line, List<Ring> rings, List<Mark> strokes) {
    List<Point> at = new ArrayList<>();
    for (Ring ring : rings) {
      for (Edge e : ring.edges()) {
        Crossing.of(line, e).forEach(c -> at.add(c.at()));
      }
    }
    at.sort(Comparator.comparingDouble(p -> p.distance(line.start())));
    for (int i = 0; i + 1 < at.size(); i++) {
      Point middle = at.get(i).towards(at.get(i + 1), 0.5);
      boolean inside =
          at.get(i).distance(at.get(i + 1)) > WIDTH
              && rings.getFirst().contains(middle)
              && rings.stream().skip(1).noneMatch(r -> r.contains(middle));
      if (inside) {
        strokes.add(Mark.Line.of(at.get(i), at.get(i + 1), WIDTH, Role.RULE));
      }
    }
  }
}
