package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Pens;
import org.jointwright.drawing.PlanDrawing;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.joint.Numbering;
import org.jointwright.joint.Numbering.Item;
import org.jointwright.joint.Numbering.Work;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.jointwright.sheet.block.Type;
import org.jointwright.sheet.page.Scale;
import org.jointwright.sheet.place.Clip;
import org.jointwright.sheet.place.Field;
import org.jointwright.sheet.place.Ground;
import org.jointwright.sheet.place.Quad;
import org.jointwright.sheet.place.Taken;

/**
 * A plan that is too crowded for its page, in parts that meet along match lines, each on a page of
 * its own; the plan itself is the key to them.
 *
 * @param windows what each part shows of the plan, inches
 */
record Parts(List<Box> windows) {
  static final Parts NONE = new Parts(List.of());

  /** How many parts there may be across and down the page, and down and across. */
  private static final int[][] WAYS = {{2, 1}, {2, 2}, {3, 2}, {3, 3}, {4, 3}};

  /** A window’s side nearer to another’s than this is the same; inches. */
  private static final double SAME = 0.01;

  private static final double HEAD = 9;
  private static final double AROUND = 7;
  private static final List<Double> DASHES = List.of(6.0, 1.5, 1.0, 1.5);

  /** Copies the list. */
  Parts {
    windows = List.copyOf(windows);
  }

  /** The fewest parts on which every label finds its place, or the most there may be. */
  static Parts of(Facts facts, double turn, Box page) {
    Box plan =
        facts.plan().slabs().stream()
            .map(Slab::outline)
            .map(o -> o.ring().box())
            .reduce(Box::with)
            .orElseThrow();
    Parts parts = NONE;
    for (int[] way : WAYS) {
      Parts one = new Parts(grid(plan, way[0], way[1]));
      Parts other = new Parts(grid(plan, way[1], way[0]));
      parts = one.ratio(facts, turn, page) <= other.ratio(facts, turn, page) ? one : other;
      if (parts.windows().stream()
          .noneMatch(w -> new Parts(List.of(w)).drawn(facts, turn, w, page).isCrowded())) {
        return parts;
      }
    }
    return parts;
  }

  /** How much smaller than true the parts are drawn. */
  private double ratio(Facts facts, double turn, Box page) {
    return field(facts, turn, windows.getFirst(), page).scale().ratio();
  }

  private static Field field(Facts facts, double turn, Box window, Box page) {
    Box room = new Box(page.minX(), page.minY() + HEAD, page.maxX(), page.maxY());
    return Field.of(window, facts.scales(), room, turn);
  }

  private static List<Box> grid(Box plan, int across, int up) {
    List<Box> windows = new ArrayList<>();
    for (int row = up - 1; row >= 0; row--) {
      for (int column = 0; column < across; column++) {
        double x = plan.minX() + plan.width() * column / across;
        double y = plan.minY() + plan.height() * row / up;
        windows.add(new Box(x, y, x + plan.width() / across, y + plan.height() / up));
      }
    }
    return windows;
  }

  /** The pages of the parts. */
  List<List<Mark>> pages(Facts facts, double turn, Box page) {
    List<List<Mark>> pages = new ArrayList<>();
    for (int i = 0; i < windows.size(); i++) {
      Drawn drawn = drawn(facts, turn, windows.get(i), page);
      String number = String.valueOf(i + 1);
      String title = facts.say("part.title", number, String.valueOf(windows.size()));
      List<Mark> marks = new ArrayList<>();
      marks.add(Type.HEAD.at(page.minX(), page.minY() + 3.6, title, Anchor.START));
      marks.add(Type.NOTE.at(page.maxX(), page.minY() + 3.6, drawn.scale().label(), Anchor.END));
      marks.add(
          Mark.Line.of(
              new Point(page.minX(), page.minY() + 5.5),
              new Point(page.maxX(), page.minY() + 5.5),
              0.5,
              Role.RULE));
      marks.addAll(drawn.marks());
      pages.add(List.of(new Mark.Group("part-" + number, "", marks)));
    }
    return pages;
  }

  /** The match lines, which no text may touch. */
  void stand(View view, Ground ground) {
    for (Box window : windows) {
      matches(window).forEach(m -> ground.addLine(Path.of(view.on(m.side())), 0.5));
    }
  }

  /** The parts' borders and names on the plan that is the key to them. */
  List<Mark> key(Facts facts, View view, Ground ground) {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < windows.size(); i++) {
      Box on = on(windows.get(i), view);
      for (Match m : matches(windows.get(i))) {
        if (m.other() > i) {
          marks.add(m.line(view, 0.5));
        }
      }
      String name = facts.say("part.tag", String.valueOf(i + 1));
      name(name, on, ground, marks);
    }
    return marks;
  }

  private static void name(String name, Box on, Ground ground, List<Mark> marks) {
    for (int k = 0; k < 400; k++) {
      double x = on.centre().x() + on.width() * 0.045 * spread(k % 20);
      double y = on.centre().y() + on.height() * 0.045 * spread(k / 20);
      Mark.Words words = Type.NAME.at(x, y, name, Anchor.MIDDLE);
      if (ground.isFree(words)) {
        ground.add(words);
        marks.add(words);
        return;
      }
    }
  }

  private static int spread(int i) {
    return i % 2 == 0 ? i / 2 : -(i + 1) / 2;
  }

  private static Box on(Box window, View view) {
    return Box.of(
        view.on(new Point(window.minX(), window.minY())),
        view.on(new Point(window.maxX(), window.maxY())));
  }

  /**
   * A side that a part shares with another.
   *
   * @param side the side, the part on its left
   * @param other which the other is, from 0
   */
  private record Match(Segment side, int other) {
    Mark line(View view, double width) {
      return new Mark.Line(Path.of(view.on(side)), width, DASHES, Role.DIMENSION);
    }
  }

  private List<Match> matches(Box window) {
    List<Match> matches = new ArrayList<>();
    for (Edge e :
        Rings.box(window.minX(), window.minY(), window.width(), window.height()).edges()) {
      Point out = e.at(0.5).towards(window.centre(), -SAME);
      for (int i = 0; i < windows.size(); i++) {
        if (!windows.get(i).equals(window) && windows.get(i).holds(out)) {
          matches.add(new Match(new Segment(e.start(), e.end()), i));
        }
      }
    }
    return matches;
  }

  /** A part as it lies on its page. */
  private record Drawn(Scale scale, List<Mark> marks, boolean isCrowded) {}

  private Drawn drawn(Facts facts, double turn, Box window, Box page) {
    Field field = field(facts, turn, window, page);
    View view = field.view();
    Box on = on(window, view);
    Ground ground = new Ground(on.grown(AROUND));
    Taken.lines(facts.plan(), view, Pens.PAPER, ground);
    LabelPlacer labels = new LabelPlacer(within(facts, window), view, ground, 3.5);
    List<Mark> marks = new ArrayList<>();
    List<Mark> drawing =
        PlanDrawing.of(facts.layout(), view, Pens.PAPER).marks().stream()
            .filter(m -> !(m instanceof Mark.Group g && g.name().equals("grounds")))
            .toList();
    marks.addAll(Clip.lines(drawing, on.grown(1)));
    for (Match m : matches(window)) {
      marks.add(m.line(view, 0.35));
      Point middle = view.on(m.side().at(0.5));
      Point out = middle.minus(on.centre());
      boolean level = Math.abs(out.x()) < Math.abs(out.y());
      String other = facts.say("part.tag", String.valueOf(m.other() + 1));
      Point at =
          middle
              .plus(out.times(3.6 / out.norm()))
              .plus(new Point(level ? 0 : 1.5, level ? 1.5 : 0));
      Mark.Words words = Type.NOTE.turned(at, other, Anchor.MIDDLE, level ? 0 : 90);
      if (ground.isFreeOfTexts(Quad.of(words, 0.5))) {
        ground.add(words);
        marks.add(words);
      }
    }
    marks.addAll(labels.letters());
    marks.addAll(labels.numbers());
    return new Drawn(field.scale(), marks, !labels.crowded().isEmpty());
  }

  /** What stands in a window: its corners, and of each joint the longest piece. */
  private static Facts within(Facts facts, Box window) {
    List<Item> items = new ArrayList<>();
    for (Item item : facts.numbering().items()) {
      if (item.work() == Work.BOX_OUT) {
        if (window.holds(item.path().edges().getFirst().start())) {
          items.add(item);
        }
        continue;
      }
      Clip.paths(item.path(), window.grown(1)).stream()
          .max(Comparator.comparingDouble(Path::length))
          .filter(p -> p.length() > 12)
          .map(
              p ->
                  new Item(
                      item.number(), item.work(), item.slab(), item.joints(), p, item.boxOut()))
          .ifPresent(items::add);
    }
    return new Facts(
        facts.layout(),
        facts.words(),
        new Lettering(
            facts.lettering().corners().stream()
                .filter(c -> window.grown(1).holds(c.at()))
                .toList(),
            facts.lettering().tapes()),
        new Numbering(items),
        Map.of(),
        List.of(),
        facts.ties(),
        facts.open(),
        facts.scales());
  }
}
