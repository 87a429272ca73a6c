package org.jointwright.shape.jts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Segment;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Where two regions lie over one another.
 *
 * @param widest the largest circle that lies in both
 * @param parts what lies in both; arcs are chords in it
 */
public record Overlap(InscribedCircle widest, List<Region> parts) {
  /** Points nearer to a side are on it, inches. */
  private static final double ON = 0.05;

  /** Copies the list. */
  public Overlap {
    parts = List.copyOf(parts);
  }

  /**
   * What two regions have in common; empty where it is nowhere wider than {@code least}.
   *
   * @param least inches; what only touches is 0 wide
   * @throws IllegalArgumentException if either crosses itself
   */
  public static Optional<Overlap> of(Region a, Region b, double least) {
    if (!a.outer().box().meets(b.outer().box())) {
      return Optional.empty();
    }
    Geometry common =
        OverlayNGRobust.overlay(Polygons.of(a), Polygons.of(b), OverlayNG.INTERSECTION);
    Optional<InscribedCircle> widest = Optional.empty();
    List<Region> parts = new ArrayList<>();
    for (int i = 0; i < common.getNumGeometries(); i++) {
      Geometry part = common.getGeometryN(i);
      if (!(part instanceof Polygon polygon) || part.isEmpty()) {
        continue;
      }
      InscribedCircle circle = InscribedCircle.of(part);
      if (circle.diameter() > least) {
        parts.add(Polygons.region(polygon));
        widest = widest.filter(w -> w.radius() >= circle.radius()).or(() -> Optional.of(circle));
      }
    }
    return widest.map(w -> new Overlap(w, parts));
  }

  /** The points where what lies in both turns, inches; arcs have many. */
  private List<Point> corners() {
    return parts.stream()
        .flatMap(r -> Stream.concat(Stream.of(r.outer()), r.holes().stream()))
        .flatMap(r -> r.vertices().stream())
        .toList();
  }

  /** The straight sides of one of the regions that bound what lies in both. */
  public List<Segment> sides(Region of) {
    List<Point> corners = corners();
    return of.outer().edges().stream()
        .flatMap(e -> e instanceof Segment s ? Stream.of(s) : Stream.<Segment>empty())
        .filter(s -> corners.stream().filter(p -> s.distance(p) <= ON).count() > 1)
        .toList();
  }

  /** How far what lies in both reaches in from a side of a region, square to it; inches. */
  public double depth(Segment side) {
    Point in = side.direction(0).left();
    return corners().stream().mapToDouble(p -> p.minus(side.start()).dot(in)).max().orElse(0);
  }

  /**
   * How deep what lies in both reaches into a region, inches: by the side from which it reaches in
   * least; where no straight side bounds it, by how wide it is.
   */
  public double depth(Region into) {
    return sides(into).stream().mapToDouble(this::depth).min().orElse(widest.diameter());
  }
}
