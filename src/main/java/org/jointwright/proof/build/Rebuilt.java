package org.jointwright.proof.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jointwright.proof.read.Reading;
import org.jointwright.proof.read.Reading.Bow;
import org.jointwright.proof.read.Reading.Row;
import org.jointwright.proof.read.Reading.Side;
import org.jointwright.proof.read.Reading.Strip;
import org.jointwright.proof.read.Where;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** What a finisher with a tape has on the ground after following a cut sheet. Inches. */
public final class Rebuilt {
  /** A point nearer than this to a side is said to stand on it; inches. */
  static final double ON = 0.1;

  private final Reading reading;
  private final Values values;
  private final Map<String, Point> corners = new LinkedHashMap<>();
  private final Map<String, Path> sides = new LinkedHashMap<>();
  private final Map<Integer, BoxOutShape> boxOuts = new TreeMap<>();
  private final Map<Integer, Path> joints = new TreeMap<>();
  private final List<Miss> misses = new ArrayList<>();
  private final List<Integer> lost = new ArrayList<>();

  Rebuilt(Reading reading, Values values, Net net, double[] at) {
    this.reading = reading;
    this.values = values;
    for (int i = 0; i < net.names().size(); i++) {
      corners.put(net.names().get(i), new Point(at[2 * i], at[2 * i + 1]));
    }
    double[] said = net.said(values);
    for (int i = 0; i < said.length; i++) {
      Pull p = net.pulls().get(i);
      Miss.Kind kind = p.on() < 0 ? Miss.Kind.PULL : Miss.Kind.STRING;
      misses.add(new Miss(kind, p.name(), p.is(at), said[i], p.slack()));
    }
    for (Side side : reading.sides().values()) {
      if (corners.containsKey(side.from()) && corners.containsKey(side.to())) {
        sides.put(side.name(), side(side));
      }
    }
    for (Reading.BoxOut b : reading.boxOuts()) {
      BoxOutShape.of(b, this, values).ifPresent(s -> boxOuts.put(b.number(), s));
    }
    boxOuts.values().forEach(b -> misses.addAll(b.misses()));
    List<Row> left = new ArrayList<>(reading.rows());
    while (left.removeIf(this::joint)) {
      // Joints told from others come after those.
    }
    left.forEach(r -> lost.add(r.number()));
    reading.strips().forEach(this::strip);
  }

  /** The corners by their letters. */
  public Map<String, Point> corners() {
    return corners;
  }

  /** The sides by their names. */
  public Map<String, Path> sides() {
    return sides;
  }

  /** The joints, and the filler along edges, by their numbers. */
  public Map<Integer, Path> joints() {
    return joints;
  }

  /** Whether the joint or the strip of that number was found. */
  public boolean has(int number) {
    return joints.containsKey(number);
  }

  /** The box-outs by their numbers. */
  public Map<Integer, BoxOutShape> boxOuts() {
    return boxOuts;
  }

  /** Everything that can be compared. */
  public List<Miss> misses() {
    return misses;
  }

  /** The numbers of joints and strips whose ends cannot be found. */
  public List<Integer> lost() {
    return lost;
  }

  private void compare(Miss.Kind kind, Object name, double is, double printed, double slack) {
    misses.add(new Miss(kind, String.valueOf(name), is, printed, slack));
  }

  private Path side(Side side) {
    Point a = at(side.from());
    Point b = at(side.to());
    Bow bow = reading.arcs().get(side.name());
    if (bow != null) {
      Edge arc = arc(a, b, bow.sign() * values.of(bow.bow()));
      if (arc instanceof Arc c) {
        compare(Miss.Kind.RADIUS, side.name(), c.radius(), values.of(bow.radius()), 0);
      }
      compare(Miss.Kind.SIDE, side.name(), arc.length(), values.of(side.length()), 0);
      return Path.of(arc);
    }
    List<Point> points = new ArrayList<>(List.of(a));
    for (Reading.Bend bend : reading.bends()) {
      if (bend.corner().isEmpty() && bend.at().side().equals(side.name())) {
        points.add(off(a, b, bend.at()));
      }
    }
    points.add(b);
    return Path.through(points);
  }

  private static Edge arc(Point a, Point b, double left) {
    Point u = b.minus(a).unit();
    return Arc.through(a, a.towards(b, 0.5).plus(u.left().times(left)), b);
  }

  private Point off(Point a, Point b, Where.Off o) {
    Point u = b.minus(a).unit();
    double left = o.sign() * values.of(o.off());
    return a.plus(u.times(values.of(o.along()))).plus(u.left().times(left));
  }

  private Point at(String letter) {
    return java.util.Objects.requireNonNull(corners.get(letter));
  }

  /** The direction of a side from its first letter to its last; empty where a letter is unknown. */
  Optional<Point> direction(String side) {
    String[] ends = side.split("–", -1);
    return corners.containsKey(ends[0]) && corners.containsKey(ends[1])
        ? Optional.of(at(ends[1]).minus(at(ends[0])).unit())
        : Optional.empty();
  }

  /** The point that is told; empty for box-outs and where what it is told from is not there. */
  Optional<Point> point(Where w) {
    return switch (w) {
      case Where.Corner c -> Optional.ofNullable(corners.get(c.letter()));
      case Where.Mark m ->
          Optional.ofNullable(sides.get(m.side())).map(s -> s.at(values.of(m.along())));
      case Where.Off o -> {
        String[] ends = o.side().split("–", -1);
        yield corners.containsKey(ends[0]) && corners.containsKey(ends[1])
            ? Optional.of(off(at(ends[0]), at(ends[1]), o))
            : Optional.empty();
      }
      case Where.OnJoint j ->
          Optional.ofNullable(joints.get(j.number())).map(p -> p.at(values.of(j.along())));
      case Where.EndOf e ->
          Optional.ofNullable(joints.get(e.number())).map(p -> e.last() ? p.end() : p.start());
      case Where.AtBoxOut b -> Optional.empty();
    };
  }

  private boolean joint(Row row) {
    List<Point> starts = ends(row.from(), row.to());
    List<Point> finishes = ends(row.to(), row.from());
    if (starts.isEmpty() || finishes.isEmpty()) {
      return false;
    }
    double printed = values.of(row.length());
    Point from = starts.getFirst();
    Point to = finishes.getFirst();
    double miss = Double.MAX_VALUE;
    for (Point a : starts) {
      for (Point b : finishes) {
        if (Math.abs(a.distance(b) - printed) < miss) {
          miss = Math.abs(a.distance(b) - printed);
          from = a;
          to = b;
        }
      }
    }
    double bow = row.bow().map(values::of).orElse(0.0) * row.sign();
    Edge edge = bow == 0 ? new Segment(from, to) : arc(from, to, bow);
    compare(Miss.Kind.JOINT, row.number(), edge.length(), printed, 2 * ON);
    joints.put(row.number(), Path.of(edge));
    return true;
  }

  private List<Point> ends(Where w, Where other) {
    if (!(w instanceof Where.AtBoxOut b)) {
      return point(w).stream().toList();
    }
    BoxOutShape shape = boxOuts.get(b.number());
    if (shape == null) {
      return List.of();
    }
    Optional<Point> far =
        other instanceof Where.AtBoxOut o
            ? Optional.ofNullable(boxOuts.get(o.number())).map(BoxOutShape::middle)
            : point(other);
    return far.map(shape::reachedFrom).orElse(List.of());
  }

  private void strip(Strip strip) {
    double printed = values.of(strip.length());
    if (strip.way() instanceof Reading.Way.Round) {
      BoxOutShape shape = boxOuts.get(strip.number());
      if (shape == null) {
        lost.add(strip.number());
      } else {
        shape
            .around(sides.values(), printed)
            .ifPresent(a -> compare(Miss.Kind.STRIP, strip.number(), a, printed, 4 * ON));
      }
      return;
    }
    Optional<Path> path = new StripPath(this).of(strip.way());
    if (path.isEmpty()) {
      lost.add(strip.number());
      return;
    }
    compare(Miss.Kind.STRIP, strip.number(), path.get().length(), printed, 2 * ON);
    joints.put(strip.number(), path.get());
  }
}
