package org.jointwright.fix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jointwright.fix.line.BoxedOut;
import org.jointwright.fix.line.Redraft;
import org.jointwright.joint.Cutout;
import org.jointwright.joint.Cutouts;
import org.jointwright.plan.FixedObject;
import org.jointwright.practice.BoxOuts;
import org.jointwright.shape.Edge;
import org.jointwright.shape.EnclosingRectangle;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * Boxes a fixed object out: the box-out as it is with filler all round, made larger or smaller, or
 * a new one, a square whose corners meet joints, or round.
 */
final class FillBoxOut implements Remedy {
  private static final double CLEAR = BoxOuts.CLEAR.value().inches();
  private static final double USUAL = BoxOuts.USUAL_REACH_AT_CORNERS.value().inches();

  /** A box-out is tried in steps of this share of its size. */
  private static final double STEP = 0.05;

  private static final int MOST_STEPS = 60;

  /** An object this near to a side stands at it, inches. */
  private static final double AT_SIDE = 6;

  @Override
  public List<Fix> proposals(Broken broken) {
    Optional<FixedObject> object = broken.fixed().flatMap(broken.plan()::fixedObject);
    return object.map(o -> proposals(broken, o)).orElse(List.of());
  }

  private static List<Fix> proposals(Broken broken, FixedObject object) {
    List<Fix> fixes = new ArrayList<>();
    Ring shape = object.shape().ring();
    Optional<Ring> now =
        Cutouts.of(broken.plan(), broken.slab()).stream()
            .filter(c -> c.fixed().equals(object.id()))
            .map(Cutout::ring)
            .filter(r -> !r.equals(shape))
            .findFirst();
    if (now.isPresent()) {
      add(broken, object, now.get(), "fix.boxOut.filler", fixes);
      scaled(now.get(), shape).ifPresent(r -> add(broken, object, r, "fix.boxOut.size", fixes));
    }
    for (Ring ring : anew(broken, shape)) {
      add(broken, object, ring, now.isPresent() ? "fix.boxOut.anew" : "fix.boxOut.add", fixes);
    }
    return fixes;
  }

  /** The box-out as large as it should be, about the middle of its object. */
  private static Optional<Ring> scaled(Ring ring, Ring object) {
    boolean isFar = ring.vertices().stream().anyMatch(p -> object.distance(p) > USUAL);
    for (int i = 1; i <= MOST_STEPS; i++) {
      double by = isFar ? 1 - i * STEP : 1 + i * STEP;
      if (by <= 0) {
        break;
      }
      Ring tried = BoxedOut.scaled(ring, object.box().centre(), by);
      boolean fits =
          isFar
              ? tried.vertices().stream().allMatch(p -> object.distance(p) <= USUAL)
              : isClear(tried, object);
      if (fits) {
        return Optional.of(tried);
      }
    }
    return Optional.empty();
  }

  private static boolean isClear(Ring ring, Ring object) {
    return object.edges().stream()
        .flatMap(e -> Stream.of(e.start(), e.at(0.25), e.at(0.5), e.at(0.75)))
        .allMatch(p -> ring.contains(p) && ring.distance(p) >= CLEAR);
  }

  /** Squares turned so that their corners lie along the slab's joints or sides, and a circle. */
  private static List<Ring> anew(Broken broken, Ring object) {
    List<Ring> rings = new ArrayList<>();
    for (Point middle : middles(broken, object)) {
      for (Point u : directions(broken)) {
        rings.add(square(object, middle, u));
        rings.add(square(object, middle, u.turned(Math.PI / 4)));
      }
    }
    Point middle = object.box().centre();
    double reach = around(object).mapToDouble(p -> p.distance(middle)).max().orElse(0);
    rings.add(BoxedOut.circle(middle, Math.ceil(reach + CLEAR)));
    return rings;
  }

  private static Stream<Point> around(Ring object) {
    return object.edges().stream()
        .flatMap(e -> Stream.of(0.0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875).map(e::at));
  }

  /** The square with two corners in a direction that stands clear of an object. */
  private static Ring square(Ring object, Point middle, Point u) {
    double half =
        around(object)
            .map(p -> p.minus(middle))
            .mapToDouble(p -> Math.abs(p.dot(u)) + Math.abs(p.cross(u)))
            .max()
            .orElse(0);
    return BoxedOut.square(middle, u, Math.ceil(half + CLEAR * Math.sqrt(2)));
  }

  /** The middle of a box-out: on the slab's corner or side where the object stands at one. */
  private static List<Point> middles(Broken broken, Ring object) {
    List<Point> middles = new ArrayList<>();
    Ring outline = broken.slab().outline().ring();
    outline.vertices().stream()
        .filter(p -> object.contains(p) || object.distance(p) <= AT_SIDE)
        .forEach(middles::add);
    Point middle = object.box().centre();
    for (Edge e : outline.edges()) {
      Point foot = e.at(e.nearest(middle));
      if (object.contains(foot) || object.distance(foot) <= AT_SIDE) {
        middles.add(foot);
      }
    }
    middles.add(middle);
    return middles;
  }

  private static List<Point> directions(Broken broken) {
    List<Point> directions = new ArrayList<>();
    directions.add(EnclosingRectangle.of(broken.slab().outline().ring()).direction());
    for (Edge e : broken.slab().outline().ring().edges()) {
      Point u = e.direction(0);
      boolean isNew =
          directions.stream()
              .allMatch(d -> Math.min(Math.abs(d.cross(u)), Math.abs(d.dot(u))) > 0.05);
      if (isNew && directions.size() < 3) {
        directions.add(u);
      }
    }
    return directions;
  }

  private static void add(
      Broken broken, FixedObject object, Ring ring, String key, List<Fix> fixes) {
    Set<Redraft> tried =
        Stream.of(true, false)
            .flatMap(through -> BoxedOut.round(broken.floor(), object, ring, through).stream())
            .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
    for (Redraft r : tried) {
      fixes.add(Fix.of(key, "fix.did.boxOut", List.of(object.id()), r.edit()));
    }
  }
}
