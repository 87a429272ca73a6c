package org.jointwright.sheet.readback;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.jointwright.sheet.readback.Reading.Bow;
import org.jointwright.sheet.readback.Reading.BoxOut;
import org.jointwright.sheet.readback.Reading.Row;
import org.jointwright.sheet.readback.Reading.Side;
import org.jointwright.sheet.readback.Reading.Strip;
import org.jointwright.sheet.readback.Reading.Where;

/** What a finisher with a tape would have on the ground after following a cut sheet. Inches. */
final class Rebuilt {
  final Map<String, Point> corners;
  final Map<String, Path> sides = new LinkedHashMap<>();
  final Map<Integer, List<Point>> boxOuts = new TreeMap<>();
  final Map<Integer, Double> rounds = new HashMap<>();
  final Map<Integer, Path> joints = new TreeMap<>();

  /** What does not close: printed lengths that the rebuilt lines do not have. */
  final List<String> faults = new ArrayList<>();

  private final Reading reading;
  private final double tolerance;

  Rebuilt(Reading reading, double tolerance) {
    this.reading = reading;
    this.tolerance = tolerance;
    corners = Net.corners(reading);
    double misfit = Net.misfit(reading, corners);
    if (misfit > tolerance) {
      faults.add("sides and diagonals do not close by " + misfit);
    }
    reading.sides().forEach((name, side) -> sides.put(name, side(name, side)));
    reading.boxOuts().forEach(this::boxOut);
    List<Row> left = new ArrayList<>(reading.rows());
    while (left.removeIf(this::joint)) {
      // Joints told from others come after those.
    }
    left.forEach(r -> faults.add("joint " + r.number() + " cannot be found"));
    reading.strips().forEach(this::strip);
  }

  private Path side(String name, Side side) {
    Point a = corners.get(side.from());
    Point b = corners.get(side.to());
    Bow bow = reading.arcs().get(name);
    if (bow != null) {
      Edge arc = arc(a, b, bow.left());
      if (arc instanceof Arc c) {
        // The radius is the least certain of the figures: a bow slips it by (chord/bow)^2 / 8.
        double slip = Math.pow(bow.chord() / bow.left(), 2) / 8 + 1;
        near("radius of " + name, c.radius(), bow.radius(), tolerance / 2 * slip);
      }
      near("arc " + name, arc.length(), side.length(), 2 * tolerance);
      return Path.of(arc);
    }
    List<Point> points = new ArrayList<>(List.of(a));
    for (Reading.Bend bend : reading.bends()) {
      if (bend.corner().isEmpty() && bend.off().side().equals(name)) {
        points.add(off(a, b, bend.off().along(), bend.off().left()));
      }
    }
    points.add(b);
    return Path.through(points);
  }

  private static Edge arc(Point a, Point b, double left) {
    Point u = b.minus(a).unit();
    return Arc.through(a, a.towards(b, 0.5).plus(u.left().times(left)), b);
  }

  private static Point off(Point a, Point b, double along, double left) {
    Point u = b.minus(a).unit();
    return a.plus(u.times(along)).plus(u.left().times(left));
  }

  void near(String what, double is, double printed, double within) {
    if (Math.abs(is - printed) > within) {
      faults.add(what + " is " + is + ", printed " + printed);
    }
  }

  /** The point at a distance along a path. */
  static Point along(Path path, double distance) {
    double left = distance;
    for (Edge e : path.edges()) {
      if (left <= e.length() + 1e-9) {
        return e.at(Math.clamp(left / e.length(), 0, 1));
      }
      left -= e.length();
    }
    Edge last = path.edges().getLast();
    return last.end().plus(last.direction(1).times(left));
  }

  private void boxOut(BoxOut b) {
    Map<String, Double> s = b.sizes();
    if (s.isEmpty()) {
      boxOuts.put(b.number(), b.places().stream().map(w -> point(w, null)).toList());
      return;
    }
    Where.Off where = (Where.Off) b.places().getFirst();
    Point centre = point(where, null);
    Point u = direction(where.side());
    if (s.containsKey("radius")) {
      rounds.put(b.number(), s.get("radius"));
      boxOuts.put(b.number(), List.of(centre));
    } else if (s.containsKey("center to tip")) {
      double r = s.get("center to tip");
      near("side of box-out " + b.number(), r * Math.sqrt(2), s.get("each side"), tolerance);
      boxOuts.put(
          b.number(),
          List.of(
              centre.plus(u.times(r)),
              centre.plus(u.left().times(r)),
              centre.minus(u.times(r)),
              centre.minus(u.left().times(r))));
    } else {
      double length = s.getOrDefault("along " + where.side(), s.getOrDefault("each side", 0.0));
      double depth = s.getOrDefault("across", length);
      Point x = u.times(length / 2);
      Point y = u.left().times(depth / 2);
      boxOuts.put(
          b.number(),
          List.of(
              centre.plus(x).plus(y),
              centre.minus(x).plus(y),
              centre.minus(x).minus(y),
              centre.plus(x).minus(y)));
    }
  }

  private Point direction(String side) {
    String[] ends = side.split("–", -1);
    return corners.get(ends[1]).minus(corners.get(ends[0])).unit();
  }

  private boolean known(Where w) {
    return !(w instanceof Where.OnJoint j) || joints.containsKey(j.number());
  }

  private boolean joint(Row row) {
    if (!known(row.from()) || !known(row.to())) {
      return false;
    }
    List<Point> starts = ends(row.from(), row.to());
    List<Point> finishes = ends(row.to(), row.from());
    Point from = starts.getFirst();
    Point to = finishes.getFirst();
    double miss = Double.MAX_VALUE;
    for (Point a : starts) {
      for (Point b : finishes) {
        if (Math.abs(a.distance(b) - row.length()) < miss) {
          miss = Math.abs(a.distance(b) - row.length());
          from = a;
          to = b;
        }
      }
    }
    Edge edge = row.bow() == 0 ? new Segment(from, to) : arc(from, to, row.bow());
    near("length of joint " + row.number(), edge.length(), row.length(), 2 * tolerance);
    joints.put(row.number(), Path.of(edge));
    return true;
  }

  private List<Point> ends(Where w, Where other) {
    if (w instanceof Where.AtBoxOut b) {
      if (!boxOuts.containsKey(b.number())) {
        throw new AssertionError("box-out " + b.number() + " is not on the sheet");
      }
      List<Point> points = boxOuts.get(b.number());
      if (!rounds.containsKey(b.number())) {
        return points;
      }
      Point centre = points.getFirst();
      Point far =
          other instanceof Where.AtBoxOut o
              ? boxOuts.get(o.number()).getFirst()
              : point(other, null);
      return List.of(centre.plus(far.minus(centre).unit().times(rounds.get(b.number()))));
    }
    return List.of(point(w, null));
  }

  Point point(Where w, Point ifBoxOut) {
    return switch (w) {
      case Where.Corner c -> corners.get(c.letter());
      case Where.Mark m -> along(sides.get(m.side()), m.along());
      case Where.Off o -> {
        String[] ends = o.side().split("–", -1);
        yield off(corners.get(ends[0]), corners.get(ends[1]), o.along(), o.left());
      }
      case Where.OnJoint j ->
          along(joints.get(j.number()), Math.min(j.along(), joints.get(j.number()).length()));
      case Where.AtBoxOut b -> ifBoxOut;
    };
  }

  private void strip(Strip strip) {
    if (strip.where().startsWith("round ")) {
      double around = around(strip.number());
      if (around > 0) {
        // The strip goes all round, or stops at the slab's edge: never longer than all round.
        if (strip.length() > around + 4 * tolerance) {
          faults.add("strip " + strip.number() + " is longer than its box-out");
        }
      }
      return;
    }
    Path path = stripPath(strip.where());
    near("length of strip " + strip.number(), path.length(), strip.length(), 2 * tolerance);
    joints.put(strip.number(), path);
  }

  double around(int number) {
    if (rounds.containsKey(number)) {
      return 2 * Math.PI * rounds.get(number);
    }
    List<Point> p = boxOuts.getOrDefault(number, List.of());
    double sum = 0;
    for (int i = 0; i < p.size(); i++) {
      sum += p.get(i).distance(p.get((i + 1) % p.size()));
    }
    return sum;
  }

  private Path stripPath(String where) {
    Matcher between =
        Pattern.compile("(.*) to (corner [A-Z]+|.*?" + Grammar.SIDE + ")(?: [a-z]+)?")
            .matcher(where);
    if (between.matches()) {
      return part(
          point(Grammar.where(between.group(1)), null),
          point(Grammar.where(between.group(2)), null));
    }
    Matcher letters = Pattern.compile("([A-Z]+(?:–[A-Z]+)+).*").matcher(where);
    if (!letters.matches()) {
      throw new AssertionError("not understood: " + where);
    }
    String[] names = letters.group(1).split("–", -1);
    List<Edge> edges = new ArrayList<>();
    for (int i = 1; i < names.length; i++) {
      Edge next = between(names[i - 1], names[i]);
      if (!edges.isEmpty() && !edges.getLast().end().equals(next.start())) {
        Point last = edges.getLast().end();
        edges.add(new Segment(last, next.start()));
      }
      edges.add(next);
    }
    return new Path(edges);
  }

  private Edge between(String a, String b) {
    if (sides.containsKey(a + "–" + b)) {
      return sides.get(a + "–" + b).edges().getFirst();
    }
    if (sides.containsKey(b + "–" + a)) {
      return sides.get(b + "–" + a).edges().getFirst().reversed();
    }
    return part(corners.get(a), corners.get(b)).edges().getFirst();
  }

  /** The part of a side between two points of it; a straight line where no side has both. */
  private Path part(Point a, Point b) {
    for (Path side : sides.values()) {
      if (side.edges().size() == 1
          && side.edges().getFirst() instanceof Arc arc
          && arc.distance(a) < 0.5
          && arc.distance(b) < 0.5) {
        double t = arc.nearest(a);
        double u = arc.nearest(b);
        Edge e = t < u ? arc.part(t, u) : arc.reversed().part(1 - t, 1 - u);
        return Path.of(e);
      }
    }
    return Path.straight(a, b);
  }
}
