package org.jointwright.layout.boxout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jointwright.plan.Outline;
import org.jointwright.practice.BoxOuts;
import org.jointwright.shape.Chords;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Hull;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/**
 * The box-outs that may stand round one object, the likeliest first: amid the slab a square on its
 * corner, a round one, one with round ends where the object is long; at an edge the half of one
 * centred on the edge; in a corner the quarter of one.
 */
final class Shapes {
  private static final double CLEAR = BoxOuts.CLEAR.value().inches();
  private static final double REACH = BoxOuts.REACH.value().inches();
  private static final double USUAL_REACH = BoxOuts.USUAL_REACH_AT_CORNERS.value().inches();

  /** An object this near to an edge may share a box-out with it, inches. */
  private static final double BESIDE = 15;

  /** Longer over shorter side from which on round ends come first. */
  private static final double LONG = 1.6;

  /** An object turned more than this against the slab has a square of its own, degrees. */
  private static final double TURNED = 3;

  /** What runs out to an edge is drawn this far past it before it is cut off there, inches. */
  private static final double PAST = 24;

  /** What is left between a box-out and an edge is a neck when it is narrower, inches. */
  private static final double NECK = 12;

  /** Box-outs of one make but two kinds stand farther apart than this, inches. */
  private static final double LITTLE = 2;

  private static final int MOST = 4;

  /** A joint line nearer to an object than this is met by a usual box-out, inches. */
  private static final double LEAST_REACH = 9;

  /** Beyond any slab, inches. */
  private static final double FAR = 1e6;

  private final Region slab;
  private final Point axis;
  private final List<Ring> objects;
  private final Ring object;
  private final Wraps wraps;
  private final double spacing;
  private final List<Outline> usual = new ArrayList<>();
  private final List<Outline> large = new ArrayList<>();
  private final List<Outline> reaching = new ArrayList<>();
  private Predicate<Outline> enough = o -> false;
  private Predicate<Outline> hopeful = o -> true;
  private boolean found;
  private boolean runsOut;

  private Shapes(Region slab, Point axis, List<Ring> objects, double spacing, boolean metric) {
    this.spacing = spacing;
    this.slab = slab;
    this.axis = axis;
    this.objects = objects;
    this.object = objects.size() == 1 ? objects.getFirst() : hull(objects);
    this.wraps = new Wraps(object, metric);
  }

  /**
   * The choices for an object, or for several in one, in a slab whose longest straight edge runs
   * along an axis.
   */
  static List<Outline> of(
      Region slab, Point axis, List<Ring> objects, double spacing, boolean metric) {
    Shapes s = new Shapes(slab, axis, objects, spacing, metric);
    s.find();
    List<Outline> all = new ArrayList<>(s.usual);
    all.addAll(s.large);
    List<Outline> some = new ArrayList<>(all.subList(0, Math.min(MOST, all.size())));
    some.addAll(s.reaching);
    return some;
  }

  /**
   * The choice for one object that is most like what it was: of the same make, no corner more than
   * {@code moved} inches from where it was. Where that is little, the first such choice is taken
   * and those after it are not worked out.
   */
  static Optional<Outline> like(
      Outline was,
      Region slab,
      Point axis,
      Ring object,
      double spacing,
      boolean metric,
      double moved) {
    Shapes s = new Shapes(slab, axis, List.of(object), spacing, metric);
    s.enough = o -> moved <= LITTLE && apart(o, was) <= moved;
    s.hopeful = o -> mayBe(o, was, moved);
    s.find();
    return Stream.of(s.usual, s.large, s.reaching)
        .flatMap(List::stream)
        .filter(o -> apart(o, was) <= moved)
        .min(Comparator.comparingDouble(o -> apart(o, was)));
  }

  /** Whether a shape may be like another once it is cut off at the slab's edges. */
  private static boolean mayBe(Outline whole, Outline was, double moved) {
    boolean round = whole.ring().edges().stream().anyMatch(e -> e.turn() != 0);
    return round
        ? was.ring().edges().stream().anyMatch(e -> e.turn() != 0)
        : whole.ring().vertices().stream()
            .anyMatch(p -> was.ring().vertices().stream().anyMatch(q -> p.distance(q) <= moved));
  }

  /** How far corners and middles of edges of two outlines of one make stand apart at most. */
  private static double apart(Outline one, Outline other) {
    List<Edge> a = one.ring().edges();
    List<Edge> b = other.ring().edges();
    double most = a.size() == b.size() ? 0 : Double.POSITIVE_INFINITY;
    for (int i = 0; i < a.size() && most < Double.POSITIVE_INFINITY; i++) {
      boolean alike = (a.get(i).turn() != 0) == (b.get(i).turn() != 0);
      double start = a.get(i).start().distance(b.get(i).start());
      double middle = a.get(i).at(0.5).distance(b.get(i).at(0.5));
      most = alike ? Math.max(most, Math.max(start, middle)) : Double.POSITIVE_INFINITY;
    }
    return most;
  }

  private static Ring hull(List<Ring> objects) {
    List<Point> points = new ArrayList<>();
    objects.forEach(r -> points.addAll(Chords.round(r, 0.02)));
    return Ring.of(Hull.of(points).points());
  }

  private void find() {
    if (isLong()) {
      toEdges();
    }
    List<Edge> near = nearEdges(CLEAR);
    if (near.isEmpty()) {
      amid();
      atEdges(nearEdges(BESIDE));
    } else {
      atEdges(near);
      atEdges(nearEdges(BESIDE));
      amid();
    }
    if (!isLong()) {
      toEdges();
    }
    if (near.isEmpty() && objects.size() == 1 && !isLong() && Double.isFinite(spacing)) {
      toLines();
    }
  }

  /**
   * Out to the line where a joint would run if the object were not there, or to the edge, square on
   * each side of it: the line meets the flat end, and one joint the round one. For an object that
   * stands a foot or two off the joints then need not go round it.
   */
  private void toLines() {
    Point middle = wraps.middle(axis);
    for (int i = 0; i < 4; i++) {
      Point way = axis.turned(i * Math.PI / 2);
      double ahead = room(middle, way);
      double behind = room(middle, way.times(-1));
      int panels = (int) Math.ceil((ahead + behind) / spacing - 1e-6);
      for (int k = 1; k < panels; k++) {
        double off = wraps.near(k * (ahead + behind) / panels - behind);
        if (off > wraps.half(way) + LEAST_REACH && off < wraps.half(way) + REACH) {
          add(() -> wraps.runOut(way, new double[] {off, 0, 0, 0}, true), true);
        }
      }
      double gap = ahead - wraps.half(way);
      if (gap > BESIDE && gap < REACH) {
        add(() -> wraps.runOut(way, new double[] {ahead + PAST, 0, 0, 0}, true), true);
      }
    }
  }

  /** How far it is to the first edge of the slab. */
  private double room(Point from, Point way) {
    double least = Double.POSITIVE_INFINITY;
    Edge ray = new Segment(from, from.plus(way.times(FAR)));
    for (Edge e : edges()) {
      for (Crossing c : Crossing.of(ray, e)) {
        least = Math.min(least, c.at().distance(from));
      }
    }
    return least;
  }

  private boolean isLong() {
    return wraps.rectangle().aspect() > LONG;
  }

  /** Out to each edge that the object nearly reaches: a drain from edge to edge parts the slab. */
  private void toEdges() {
    Point u = isLong() ? wraps.rectangle().direction() : axis;
    Point middle = wraps.middle(u);
    double[] out = new double[4];
    boolean any = false;
    for (int i = 0; i < 4; i++) {
      Point way = u.turned(i * Math.PI / 2);
      double half = wraps.half(way);
      Edge ray = new Segment(middle, middle.plus(way.times(half + BESIDE)));
      double edge = 0;
      for (Edge e : edges()) {
        for (Crossing c : Crossing.of(ray, e)) {
          edge = Math.max(edge, c.at().distance(middle));
        }
      }
      out[i] = edge == 0 ? 0 : Math.max(edge, half) + PAST;
      any |= edge > 0;
    }
    runsOut = out[0] > 0 || out[2] > 0;
    if (any) {
      add(() -> wraps.runOut(u, out, isLong()));
    }
  }

  private List<Edge> edges() {
    List<Edge> all = new ArrayList<>(slab.outer().edges());
    slab.holes().forEach(h -> all.addAll(h.edges()));
    return all;
  }

  private void amid() {
    Point middle = wraps.middle(axis);
    // Its round end would leave slivers where the object nearly reaches an edge.
    if (isLong() && !runsOut) {
      add(() -> wraps.roundEnded());
    }
    add(() -> wraps.turned(middle, axis));
    add(() -> wraps.round(middle));
    Point own = wraps.rectangle().direction();
    // A round object is turned no way.
    boolean round = object.edges().stream().allMatch(e -> e.turn() != 0);
    if (!round && turnedBy(own) > TURNED) {
      add(() -> wraps.turned(wraps.middle(own), own));
    }
    add(() -> wraps.upright(axis));
  }

  /** The angle between two directions, square ones taken as one, degrees. */
  private double turnedBy(Point own) {
    return Math.toDegrees(
        Math.asin(Math.min(1, Math.min(Math.abs(own.cross(axis)), Math.abs(own.dot(axis))))));
  }

  private void atEdges(List<Edge> near) {
    Point middle = wraps.middle(axis);
    corner(near)
        .ifPresent(
            c -> {
              add(() -> wraps.turned(c.at(), c.along()));
              add(() -> wraps.round(c.at()));
            });
    for (Edge e : near) {
      double share = e.nearest(middle);
      Point foot = e.at(share);
      add(() -> wraps.turned(foot, e.direction(share)));
      add(() -> wraps.round(foot));
    }
  }

  private record Place(Point at, Point along) {}

  /** The corner where two edges near the object meet. */
  private static Optional<Place> corner(List<Edge> near) {
    for (Edge in : near) {
      for (Edge out : near) {
        if (!in.equals(out) && in.end().equals(out.start())) {
          return Optional.of(new Place(out.start(), out.direction(0)));
        }
      }
    }
    return Optional.empty();
  }

  /** The edges nearer to the object than {@code least}, or that it stands across. */
  private List<Edge> nearEdges(double least) {
    List<Edge> found = new ArrayList<>();
    for (Edge e : edges()) {
      double near = Double.POSITIVE_INFINITY;
      for (Point p : Chords.round(object, 1)) {
        near = Math.min(near, e.distance(p));
      }
      for (Edge side : object.edges()) {
        near = Math.min(near, Math.min(side.distance(e.start()), side.distance(e.end())));
        boolean across = !Crossing.of(side, e).isEmpty();
        near = across ? 0 : near;
      }
      if (near < least) {
        found.add(e);
      }
    }
    return found;
  }

  private void add(Supplier<Outline> shape) {
    add(shape, /* reachesOut= */ false);
  }

  private void add(Supplier<Outline> shape, boolean reachesOut) {
    Outline whole = shape.get();
    if (!found && hopeful.test(whole)) {
      Clip.of(whole, slab).ifPresent(o -> keep(o, reachesOut));
    }
  }

  private void keep(Outline shape, boolean reachesOut) {
    double reach = 0;
    for (Edge e : shape.ring().edges()) {
      for (Point p : List.of(e.start(), e.at(0.5))) {
        for (Ring o : objects) {
          reach = Math.max(reach, o.contains(p) ? 0 : o.distance(p));
        }
      }
    }
    boolean known =
        usual.stream().anyMatch(s -> same(s, shape))
            || large.stream().anyMatch(s -> same(s, shape));
    if (reach <= REACH && !known && isClear(shape)) {
      boolean isLarge = reach > USUAL_REACH || leavesNeck(shape);
      (reachesOut ? reaching : isLarge ? large : usual).add(shape);
      found |= enough.test(shape);
    }
  }

  /** Whether it comes so near to an edge without reaching it that only a neck is left between. */
  private boolean leavesNeck(Outline shape) {
    return edges().stream()
            .flatMap(
                e ->
                    shape.ring().edges().stream()
                        .map(side -> Math.min(e.distance(side.at(0.5)), e.distance(side.start()))))
            .anyMatch(d -> d > 0.1 && d < NECK)
        && shape.ring().vertices().stream()
            .noneMatch(v -> edges().stream().anyMatch(e -> e.distance(v) <= 0.1));
  }

  /** Whether it stands clear of the object wherever it is not on the slab's own edge. */
  private boolean isClear(Outline shape) {
    for (Edge e : shape.ring().edges()) {
      boolean free =
          slab.outer().distance(e.at(0.5)) > 0.1
              && slab.holes().stream().allMatch(h -> h.distance(e.at(0.5)) > 0.1);
      for (int i = 0; i <= 8 && free; i++) {
        Point p = e.at(i / 8.0);
        if (objects.stream().anyMatch(o -> o.contains(p) || o.distance(p) < CLEAR - 0.05)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean same(Outline a, Outline b) {
    List<Point> p = a.ring().vertices();
    List<Point> q = b.ring().vertices();
    return p.size() == q.size()
        && p.stream().allMatch(x -> q.stream().anyMatch(y -> y.distance(x) < 0.5));
  }

  /** The direction of a slab's longest straight edge. */
  static Point axis(Ring outline) {
    Edge longest = outline.edges().getFirst();
    for (Edge e : outline.edges()) {
      if (e instanceof Segment && (longest.turn() != 0 || e.length() > longest.length() + 0.01)) {
        longest = e;
      }
    }
    return longest instanceof Segment s ? s.direction(0) : new Point(1, 0);
  }
}
