package org.jointwright.designer.state;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.sketch.Guide;
import org.jointwright.designer.sketch.Pencil;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * What gently draws the pencil: the first corner, other corners, half way along sides, square to
 * the side before and straight on from it, square and parallel to sides nearby, in line with other
 * corners. What lies farther away than its reach draws nothing.
 *
 * @param corners the corners that draw it
 * @param sides the sides that draw it
 * @param evens the even places that draw it
 * @param joints the joints that draw it
 * @param draft the sides before the pencil
 * @param pixel inches for a pixel
 * @param isMetric whether tidy lengths are metric
 */
public record Attraction(
    List<Point> corners,
    List<Edge> sides,
    List<Guide> evens,
    List<Edge> joints,
    Draft draft,
    double pixel,
    boolean isMetric) {
  private static final double CORNER_REACH = 11;

  /** Places nearer than this are one, inches. */
  private static final double SAME = 0.5;

  /** A side as near to the edge being drawn has it square or parallel to itself, pixels. */
  private static final double NEARBY = 120;

  /** Ways that part by less are one, the sine: about half a degree. */
  private static final double ONE_WAY = 0.009;

  private static final double LINE_REACH = 8;
  private static final double SIDE_REACH = 7;

  /** So much nearer an even place must be than a square one to draw the pencil, pixels. */
  private static final double SQUARE_FIRST = 3;

  /** A string that may draw the pencil: a line through {@code from} along {@code way}. */
  private record Strung(Guide.Kind kind, Point from, Point way) {
    Point foot(Point p) {
      return from.plus(way.times(p.minus(from).dot(way)));
    }

    double away(Point p) {
      return foot(p).distance(p);
    }
  }

  /** What draws a pencil that draws on a plan. */
  public static Attraction drawing(Plan plan, Draft draft, double pixel) {
    return draft.what() == Drawn.JOINT
        ? joint(plan, draft, pixel)
        : new Attraction(
            cornersOf(plan, Optional.empty()),
            sidesOf(plan, ""),
            List.of(),
            List.of(),
            draft,
            pixel,
            plan.unit().isMetric());
  }

  /** What draws the end of a joint: corners of box-outs too, other joints, even divisions. */
  public static Attraction joint(Plan plan, Draft draft, double pixel) {
    List<Point> corners = new ArrayList<>(cornersOf(plan, Optional.empty()));
    List<Edge> joints = new ArrayList<>();
    List<Edge> rims = new ArrayList<>();
    for (Slab s : plan.slabs()) {
      s.boxOuts().forEach(b -> b.outline().vertices().forEach(v -> corners.add(v.at())));
      s.joints().stream()
          .filter(j -> j.kind() != JointKind.ISOLATION)
          .forEach(j -> joints.addAll(j.path().edges()));
      JointRun.rims(s).forEach(rims::add);
    }
    return new Attraction(
        corners, rims, EvenMarks.of(plan), joints, draft, pixel, plan.unit().isMetric());
  }

  /** What draws a corner that is dragged: the sides at it, and all that is not its own. */
  public static Attraction dragging(Plan plan, Ref corner, double pixel) {
    List<Vertex> ring = Picks.outline(plan, corner).orElseThrow().vertices();
    int n = ring.size();
    Vertex before = Vertex.at(ring.get((corner.index() + n - 2) % n).at());
    Vertex last = Vertex.at(ring.get((corner.index() + n - 1) % n).at());
    return new Attraction(
        cornersOf(plan, Optional.of(corner)),
        sidesOf(plan, corner.slab()),
        List.of(),
        List.of(),
        new Draft(List.of(before, last), Optional.empty(), ""),
        pixel,
        plan.unit().isMetric());
  }

  /** Where the pencil comes to stand for a hand at {@code raw}. */
  public Pencil at(Point raw) {
    return corner(raw)
        .or(() -> jointEnd(raw))
        .or(() -> squareOrEven(raw))
        .or(() -> halfWay(raw))
        .or(() -> strings(raw))
        .or(() -> side(raw))
        .or(() -> onJoint(raw))
        .orElseGet(() -> Pencil.free(tidy(raw)));
  }

  private Optional<Pencil> corner(Point raw) {
    double reach = CORNER_REACH * pixel;
    Optional<Point> first =
        draft.first().filter(f -> draft.placed().size() >= 2 && !draft.what().isLine());
    if (first.isPresent() && first.get().distance(raw) <= reach) {
      Point f = first.get();
      return Optional.of(new Pencil(f, List.of(new Guide(Guide.Kind.FIRST_CORNER, f, f))));
    }
    return corners.stream()
        .filter(c -> c.distance(raw) <= reach)
        .min(Comparator.comparingDouble(c -> c.distance(raw)))
        .map(c -> new Pencil(c, List.of(new Guide(Guide.Kind.CORNER, c, c))));
  }

  private Optional<Pencil> jointEnd(Point raw) {
    return joints.stream()
        .flatMap(e -> Stream.of(e.start(), e.end()))
        .filter(p -> p.distance(raw) <= CORNER_REACH * pixel)
        .min(Comparator.comparingDouble(p -> p.distance(raw)))
        .map(Attraction::atJoint);
  }

  private Optional<Pencil> onJoint(Point raw) {
    return joints.stream()
        .filter(e -> e.distance(raw) <= SIDE_REACH * pixel)
        .findFirst()
        .map(e -> atJoint(e.at(e.nearest(raw))));
  }

  private static Pencil atJoint(Point p) {
    return new Pencil(p, List.of(new Guide(Guide.Kind.AT_JOINT, p, p)));
  }

  /** Square rather than even where both are under the hand: a joint a little off looks a slip. */
  private Optional<Pencil> squareOrEven(Point raw) {
    Optional<Pencil> even = even(raw);
    Optional<Pencil> foot = foot(raw);
    if (even.isEmpty() || foot.isEmpty()) {
      return even.isPresent() || !halfWay(raw).isEmpty() ? even : foot;
    }
    double more = foot.get().at().distance(raw) - even.get().at().distance(raw);
    return more <= SQUARE_FIRST * pixel ? foot : even;
  }

  private Optional<Pencil> even(Point raw) {
    return evens.stream()
        .filter(g -> g.to().distance(raw) <= LINE_REACH * pixel)
        .min(Comparator.comparingDouble(g -> g.to().distance(raw)))
        .map(g -> new Pencil(g.to(), List.of(g)));
  }

  private Optional<Pencil> halfWay(Point raw) {
    return sides.stream()
        .filter(e -> e.at(0.5).distance(raw) <= CORNER_REACH * pixel)
        .findFirst()
        .map(e -> new Pencil(e.at(0.5), List.of(along(Guide.Kind.HALF_WAY, e, e.at(0.5)))));
  }

  /** Where the edge being drawn meets another side square. */
  private Optional<Pencil> foot(Point raw) {
    return feet().stream()
        .filter(p -> p.at().distance(raw) <= CORNER_REACH * pixel)
        .min(Comparator.comparingDouble(p -> p.at().distance(raw)));
  }

  private List<Pencil> feet() {
    List<Pencil> feet = new ArrayList<>();
    if (draft.last().isPresent()) {
      Point last = draft.last().get();
      for (Edge e : sides) {
        double t = e.nearest(last);
        Point at = e.at(t);
        boolean isAmid = t * e.length() > SAME && (1 - t) * e.length() > SAME;
        if (e instanceof Segment && isAmid && at.distance(last) > SAME) {
          Guide square = new Guide(Guide.Kind.SQUARE, last, at);
          feet.add(new Pencil(at, List.of(square, along(Guide.Kind.ON_SIDE, e, at))));
        }
      }
    }
    return feet;
  }

  private Optional<Pencil> side(Point raw) {
    return sides.stream()
        .filter(e -> e.distance(raw) <= SIDE_REACH * pixel)
        .findFirst()
        .map(
            e -> {
              double along = Math.clamp(stepped(e.nearest(raw) * e.length()), 0, e.length());
              Point on = e.at(along / e.length());
              return new Pencil(on, List.of(along(Guide.Kind.ON_SIDE, e, on)));
            });
  }

  /** A string along a side, with the rest of it where it is straight. */
  static Guide along(Guide.Kind kind, Edge side, Point at) {
    return side instanceof Segment
        ? Guide.within(kind, side.start(), at, side.end())
        : new Guide(kind, side.start(), at);
  }

  /** The places one by one that keys lead the pencil to: closing first, then all that draw it. */
  List<Pencil> stops() {
    List<Pencil> stops = new ArrayList<>();
    draft
        .first()
        .filter(f -> draft.canClose())
        .ifPresent(
            f -> stops.add(new Pencil(f, List.of(new Guide(Guide.Kind.FIRST_CORNER, f, f)))));
    corners.forEach(c -> stops.add(new Pencil(c, List.of(new Guide(Guide.Kind.CORNER, c, c)))));
    joints.stream()
        .flatMap(e -> Stream.of(e.start(), e.end()))
        .map(Attraction::atJoint)
        .forEach(stops::add);
    evens.forEach(g -> stops.add(new Pencil(g.to(), List.of(g))));
    stops.addAll(feet());
    List<Pencil> apart = new ArrayList<>();
    for (Pencil p : stops) {
      if (apart.stream().noneMatch(q -> q.at().distance(p.at()) < SAME)) {
        apart.add(p);
      }
    }
    return apart;
  }

  private Optional<Pencil> strings(Point raw) {
    List<Strung> near =
        strung(raw).stream()
            .filter(s -> s.away(raw) <= LINE_REACH * pixel)
            .sorted(Comparator.comparingDouble(s -> s.away(raw)))
            .toList();
    if (near.isEmpty()) {
      return Optional.empty();
    }
    Strung one = near.getFirst();
    for (Strung other : near) {
      double cross = one.way().cross(other.way());
      if (Math.abs(cross) > 0.2) {
        double t = other.from().minus(one.from()).cross(other.way()) / cross;
        Point at = one.from().plus(one.way().times(t));
        if (at.distance(raw) <= 1.5 * LINE_REACH * pixel) {
          return Optional.of(new Pencil(at, List.of(guide(one, at), guide(other, at))));
        }
      }
    }
    Point at = along(one, one.foot(raw));
    return Optional.of(new Pencil(at, List.of(guide(one, at))));
  }

  private static Guide guide(Strung strung, Point at) {
    return new Guide(strung.kind(), strung.from(), at);
  }

  /** On a string, so that the edge, or the string itself, has a tidy length. */
  private Point along(Strung s, Point foot) {
    Point start = draft.last().orElse(s.from());
    Point base = s.foot(start);
    if (base.distance(start) > pixel) {
      base = s.from();
    }
    Point way = foot.minus(base);
    return way.norm() < pixel ? foot : base.plus(way.unit().times(stepped(way.norm())));
  }

  private List<Strung> strung(Point raw) {
    List<Strung> strung = new ArrayList<>();
    Optional<Point> heading = draft.heading();
    Point way = heading.orElse(new Point(1, 0));
    draft
        .last()
        .ifPresent(
            last -> {
              boolean isFirst = heading.isEmpty();
              Guide.Kind on = isFirst ? Guide.Kind.LEVEL : Guide.Kind.STRAIGHT_ON;
              Guide.Kind square = isFirst ? Guide.Kind.LEVEL : Guide.Kind.SQUARE;
              strung.add(new Strung(square, last, way.left()));
              strung.add(new Strung(on, last, way));
              strung.addAll(besides(last, raw, way));
            });
    for (Point c : inLine()) {
      strung.add(new Strung(Guide.Kind.IN_LINE, c, way));
      strung.add(new Strung(Guide.Kind.IN_LINE, c, way.left()));
    }
    return strung;
  }

  /** Square and parallel to the sides nearby, whichever way they run. */
  private List<Strung> besides(Point last, Point raw, Point way) {
    List<Point> ways = new ArrayList<>(List.of(way));
    List<Strung> strung = new ArrayList<>();
    for (Edge e : sides) {
      double away = Math.min(e.distance(last), e.distance(raw));
      Point along = e.direction(0);
      boolean isNew =
          ways.stream()
              .allMatch(w -> Math.min(Math.abs(w.cross(along)), Math.abs(w.dot(along))) > ONE_WAY);
      if (e instanceof Segment && away <= NEARBY * pixel && isNew) {
        ways.add(along);
        strung.add(new Strung(Guide.Kind.SQUARE, last, along.left()));
        strung.add(new Strung(Guide.Kind.PARALLEL, last, along));
      }
    }
    return strung;
  }

  /** The corners that the pencil may come in line with: the draft's but the last, the plan's. */
  private List<Point> inLine() {
    List<Point> points = new ArrayList<>();
    int n = draft.placed().size();
    draft.placed().subList(0, Math.max(0, n - 1)).forEach(v -> points.add(v.at()));
    points.addAll(corners);
    return points;
  }

  private static List<Point> cornersOf(Plan plan, Optional<Ref> but) {
    List<Point> corners = new ArrayList<>();
    for (Slab s : plan.slabs()) {
      for (int ring = Ref.OUTLINE; ring < s.openings().size(); ring++) {
        List<Vertex> vertices =
            Picks.outline(plan, new Ref(s.id(), ring, 0)).orElseThrow().vertices();
        for (int i = 0; i < vertices.size(); i++) {
          if (!but.equals(Optional.of(new Ref(s.id(), ring, i)))) {
            corners.add(vertices.get(i).at());
          }
        }
      }
    }
    return corners;
  }

  private static List<Edge> sidesOf(Plan plan, String but) {
    return plan.slabs().stream()
        .filter(s -> !s.id().equals(but))
        .flatMap(s -> s.outline().ring().edges().stream())
        .toList();
  }

  private Point tidy(Point raw) {
    if (draft.last().isEmpty()) {
      return new Point(stepped(raw.x()), stepped(raw.y()));
    }
    Point last = draft.last().get();
    Point way = raw.minus(last);
    return way.norm() < pixel ? raw : last.plus(way.unit().times(stepped(way.norm())));
  }

  /** To the finest step of a tape that the hand can hit at this scale. */
  private double stepped(double inches) {
    double[] steps =
        isMetric
            ? new double[] {10 / 25.4, 50 / 25.4, 100 / 25.4, 500 / 25.4}
            : new double[] {1, 3, 6, 12, 60};
    double step = steps[steps.length - 1];
    for (double s : steps) {
      if (s >= 2.5 * pixel) {
        step = s;
        break;
      }
    }
    return Math.round(inches / step) * step;
  }
}
