package org.jointwright.sheet.owner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.measure.Length;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;
import org.jointwright.sheet.block.Type;
import org.jointwright.sheet.place.Ground;
import org.jointwright.sheet.place.Quad;
import org.jointwright.text.Words;

/**
 * How long and how wide each slab is, over all, along its longest side and square to it: on lines
 * beside it, or in words with its name where these find no room or it bends.
 */
final class Sizes {
  private static final double[] OFF = {5, 9, 13, -5, -9, 17};
  private static final double THIN = 0.25;
  private static final double TICK = 1.4;

  /** Arcs reach as far as these shares of them do. */
  private static final int PARTS = 16;

  private final Words words;
  private final View view;
  private final Ground ground;
  private final Map<String, String> told = new HashMap<>();

  Sizes(Words words, View view, Ground ground) {
    this.words = words;
    this.view = view;
    this.ground = ground;
  }

  /** The size lines of the slabs that have room for both. */
  Mark.Group of(Plan plan) {
    List<Mark> marks = new ArrayList<>();
    for (Slab slab : plan.slabs()) {
      Ground.Moment before = ground.now();
      Point along = longest(slab.outline().ring());
      Optional<Bent> bent = Bent.of(slab.outline().ring());
      List<Mark> lines = new ArrayList<>();
      boolean both = bent.isEmpty();
      for (Point u : List.of(along, along.left())) {
        Optional<List<Mark>> line = both ? size(slab, plan, u) : Optional.empty();
        line.ifPresent(lines::addAll);
        both = line.isPresent();
      }
      if (both) {
        marks.addAll(lines);
      } else {
        ground.back(before);
        told.put(slab.id(), bent.map(this::say).orElseGet(() -> say(slab, along)));
      }
    }
    return new Mark.Group("sizes", "", marks);
  }

  /** The sizes of a slab that has no lines, in words; empty where it has. */
  Optional<String> told(Slab slab) {
    return Optional.ofNullable(told.get(slab.id()));
  }

  private String say(Bent bent) {
    return words.say("sheet.owner.run", print(bent.width()), print(bent.length()));
  }

  private String say(Slab slab, Point along) {
    return words.say(
        "sheet.owner.by",
        print(reach(slab, along).inches()),
        print(reach(slab, along.left()).inches()));
  }

  private String print(double inches) {
    return words.print(Length.inches(inches));
  }

  /** The way of the longest straight side; to the right where all are arcs. */
  private static Point longest(Ring ring) {
    return ring.edges().stream()
        .filter(Segment.class::isInstance)
        .max(Comparator.comparingDouble(Edge::length))
        .map(e -> e.direction(0))
        .orElse(new Point(1, 0));
  }

  /** From where to where a slab reaches along a way and across it, inches. */
  private record Reach(DoubleSummaryStatistics along, DoubleSummaryStatistics across) {
    double inches() {
      return along.getMax() - along.getMin();
    }
  }

  private static Reach reach(Slab slab, Point u) {
    List<Point> points = new ArrayList<>();
    for (Edge e : slab.outline().ring().edges()) {
      for (int i = 0; i < (e.turn() == 0 ? 1 : PARTS); i++) {
        points.add(e.at((double) i / PARTS));
      }
    }
    return new Reach(
        points.stream().mapToDouble(u::dot).summaryStatistics(),
        points.stream().mapToDouble(u.left()::dot).summaryStatistics());
  }

  /** How far a slab reaches along {@code u}, told beside it on either side, or on it. */
  private Optional<List<Mark>> size(Slab slab, Plan plan, Point u) {
    Point v = u.left();
    Reach reach = reach(slab, u);
    DoubleSummaryStatistics along = reach.along();
    DoubleSummaryStatistics across = reach.across();
    for (double off : OFF) {
      for (int side : new int[] {-1, 1}) {
        double at = (side < 0 ? across.getMin() : across.getMax()) + side * off / view.scale();
        Point from = u.times(along.getMin()).plus(v.times(at));
        Point to = u.times(along.getMax()).plus(v.times(at));
        Point middle = from.towards(to, 0.5);
        boolean other =
            plan.slabs().stream()
                .anyMatch(s -> !s.equals(slab) && s.outline().ring().contains(middle));
        Optional<List<Mark>> placed =
            other ? Optional.empty() : line(view.on(from), view.on(to), reach.inches());
        if (placed.isPresent()) {
          return placed;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<List<Mark>> line(Point from, Point to, double inches) {
    String text = print(inches);
    Point along = to.minus(from).unit();
    Point readable =
        along.x() < -1e-9 || (Math.abs(along.x()) <= 1e-9 && along.y() > 0)
            ? along.times(-1)
            : along;
    double angle = Math.toDegrees(Math.atan2(-readable.y(), readable.x()));
    Point up = new Point(readable.y(), -readable.x());
    Type type = Type.NAME;
    double gap = type.width(text) / 2 + 1.5;
    double half = from.distance(to) / 2;
    Point middle = from.towards(to, 0.5);
    if (half < gap + 1) {
      return Optional.empty();
    }
    Mark.Words figure =
        type.turned(middle.minus(up.times(type.capital / 2)), text, Anchor.MIDDLE, angle);
    List<Path> lines =
        List.of(
            Path.straight(from, middle.minus(along.times(gap))),
            Path.straight(middle.plus(along.times(gap)), to),
            Path.straight(from.minus(up.times(TICK)), from.plus(up.times(TICK))),
            Path.straight(to.minus(up.times(TICK)), to.plus(up.times(TICK))));
    boolean free =
        ground.isFree(figure)
            && lines.stream()
                .allMatch(p -> ground.isFreeOfTexts(Quad.line(p.start(), p.end(), THIN)));
    if (!free) {
      return Optional.empty();
    }
    ground.add(figure);
    List<Mark> marks = new ArrayList<>();
    for (Path p : lines) {
      ground.addLine(p, THIN);
      marks.add(Mark.Line.of(p, THIN, Role.DIMENSION));
    }
    marks.add(figure);
    return Optional.of(marks);
  }
}
