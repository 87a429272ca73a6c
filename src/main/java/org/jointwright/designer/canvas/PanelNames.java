package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Typeface;
import org.jointwright.drawing.View;
import org.jointwright.drawing.Weight;
import org.jointwright.joint.Panel;
import org.jointwright.shape.Box;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * The names of the panels that a finding speaks of, while it is gone to or the hand rests on it:
 * its words call them by these names, and nothing else on the plan does. The first few that must be
 * mended are named all the time, where there is room.
 */
final class PanelNames {
  private static final double SIZE = 14;
  private static final double HIGH = 20;
  private static final double EDGE = 1.6;

  /** Where in a panel its name may stand, as shares of its box, the first that is free. */
  private static final double[] SHARES = {0.5, 0.3, 0.7, 0.18, 0.82};

  /** How far beside a small panel its name stands, pixels. */
  private static final double[] OFF = {16, 30, 46, 64};

  private static final int WAYS = 8;

  /** The panels of so many findings that must be mended are named all the time. */
  private static final int MOST = 8;

  private final View view;
  private final Box paper;
  private final Places places;
  private final List<Mark> marks = new ArrayList<>();

  private PanelNames(Desk desk, Places places) {
    view = desk.viewport().view();
    paper = desk.viewport().paper();
    this.places = places;
  }

  static List<Mark> of(Desk desk, Places places) {
    PanelNames names = new PanelNames(desk, places);
    boolean isBusy = desk.draft().isPresent() || desk.hand().hold().isPresent();
    if (!isBusy) {
      List<Panel> asked = panels(desk);
      asked.forEach(names::name);
      broken(desk).stream().filter(p -> !asked.contains(p)).forEach(names::quietly);
    }
    return names.marks;
  }

  /** The panels that the finding in question speaks of. */
  static List<Panel> panels(Desk desk) {
    OptionalInt number =
        desk.sight().glance().map(g -> OptionalInt.of(g.finding())).orElse(desk.sight().finding());
    Optional<Laid> laid = desk.laying().laid();
    if (number.isEmpty() || laid.isEmpty() || number.getAsInt() > laid.get().findings().size()) {
      return List.of();
    }
    return panels(laid.get(), laid.get().findings().get(number.getAsInt() - 1));
  }

  private static List<Panel> panels(Laid laid, Finding f) {
    return laid.layout().slab(f.slab()).stream()
        .flatMap(s -> s.panels().stream())
        .filter(p -> f.panel().equals(Optional.of(p.id())) || f.arguments().contains(p.id()))
        .toList();
  }

  /** The panels of what must be mended: these findings are read first. */
  private static List<Panel> broken(Desk desk) {
    return desk.laying().laid().stream()
        .flatMap(
            l ->
                l.findings().stream()
                    .filter(f -> f.severity() == Severity.MUST)
                    .limit(MOST)
                    .flatMap(f -> panels(l, f).stream()))
        .distinct()
        .toList();
  }

  /** Named only where there is room in the panel, and without a card. */
  private void quietly(Panel panel) {
    double wide = Typeface.of(Weight.BOLD).width(panel.id(), SIZE) + 12;
    if (view.boxOf(panel.ring()).meets(paper)) {
      // Without a card it must not stand on the stake of a flag either.
      within(panel, wide, places::isClear).ifPresent(box -> words(box, panel, Role.TEXT));
    }
  }

  private void words(Box box, Panel panel, Role role) {
    Point base = box.centre().plus(new Point(0, SIZE * Typeface.CAPITAL / 2));
    marks.add(Mark.Words.level(base, panel.id(), SIZE, Weight.BOLD, Anchor.MIDDLE, role));
  }

  private void name(Panel panel) {
    Ring ring = view.on(panel.ring());
    if (!ring.box().meets(paper)) {
      return;
    }
    double wide = Typeface.of(Weight.BOLD).width(panel.id(), SIZE) + 12;
    Point in = inside(panel);
    Optional<Box> free = within(panel, wide, places::isFree);
    Box box = free.or(() -> beside(ring.box(), wide)).orElseGet(() -> around(in, wide));
    if (free.isEmpty() && !box.holds(in)) {
      marks.add(Mark.Line.of(in, box.centre(), EDGE, Role.SELECTED));
    }
    Ring card = Rings.rounded(box.minX(), box.minY(), box.width(), HIGH, HIGH / 2);
    marks.add(Mark.Area.of(card, Role.PAPER));
    marks.add(Mark.Line.of(new Path(card.edges()), EDGE, Role.SELECTED));
    words(box, panel, Role.SELECTED);
  }

  /** A free place in the panel where all of the name has room. */
  private Optional<Box> within(Panel panel, double wide, Predicate<Box> isGood) {
    Box room = view.boxOf(panel.ring());
    for (double down : SHARES) {
      for (double right : SHARES) {
        Box box = around(share(room, right, down), wide);
        if (isGood.test(box)
            && corners(box).stream().allMatch(p -> paper.holds(p) && isIn(panel, p))) {
          return Optional.of(box);
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Box> beside(Box room, double wide) {
    for (double off : OFF) {
      for (int i = 0; i < WAYS; i++) {
        Point way = new Point(1, 0).turned(2 * Math.PI * i / WAYS);
        Point far =
            new Point(
                way.x() * (room.width() / 2 + off + wide / 2),
                way.y() * (room.height() / 2 + off + HIGH / 2));
        Box box = around(room.centre().plus(far), wide);
        if (isFree(box)) {
          return Optional.of(box);
        }
      }
    }
    return Optional.empty();
  }

  private boolean isFree(Box box) {
    return places.isFree(box) && corners(box).stream().allMatch(paper::holds);
  }

  /** A point that is surely the panel's. */
  private Point inside(Panel panel) {
    Box room = view.boxOf(panel.ring());
    for (double down : SHARES) {
      for (double right : SHARES) {
        Point p = share(room, right, down);
        if (isIn(panel, p)) {
          return p;
        }
      }
    }
    return room.centre();
  }

  private boolean isIn(Panel panel, Point onPaper) {
    return panel.region().contains(view.back(onPaper));
  }

  private static Point share(Box box, double right, double down) {
    return new Point(box.minX() + right * box.width(), box.minY() + down * box.height());
  }

  private static List<Point> corners(Box b) {
    return List.of(
        new Point(b.minX(), b.minY()),
        new Point(b.maxX(), b.minY()),
        new Point(b.maxX(), b.maxY()),
        new Point(b.minX(), b.maxY()));
  }

  private static Box around(Point p, double wide) {
    return new Box(p.x() - wide / 2, p.y() - HIGH / 2, p.x() + wide / 2, p.y() + HIGH / 2);
  }
}
