package org.jointwright.proof.build;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jointwright.proof.read.Figure;
import org.jointwright.proof.read.Reading.BoxOut;
import org.jointwright.proof.read.Reading.BoxOut.Size;
import org.jointwright.proof.read.Where;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/**
 * A box-out as a crew makes it.
 *
 * @param corners its corners, in their order; none of a circle
 * @param middle its middle
 * @param radius its radius, for a circle
 * @param isRounded whether its ends are round
 * @param misses the sizes of it that can be compared
 */
public record BoxOutShape(
    List<Point> corners,
    Point middle,
    OptionalDouble radius,
    boolean isRounded,
    List<Miss> misses) {
  /** Copies the lists. */
  public BoxOutShape {
    corners = List.copyOf(corners);
    misses = List.copyOf(misses);
  }

  /** The shape that the figures say; empty where it cannot be made of them. */
  static Optional<BoxOutShape> of(BoxOut b, Rebuilt rebuilt, Values values) {
    Map<Size, Figure> sizes = b.sizes();
    List<Point> places = b.places().stream().map(rebuilt::point).flatMap(Optional::stream).toList();
    if (places.isEmpty() || places.size() < b.places().size()) {
      return Optional.empty();
    }
    if (places.size() > 1) {
      return Optional.of(
          new BoxOutShape(
              places,
              middle(places),
              OptionalDouble.empty(),
              sizes.containsKey(Size.END_RADIUS),
              List.of()));
    }
    Point middle = places.getFirst();
    Figure radius = sizes.get(Size.RADIUS);
    if (radius != null) {
      OptionalDouble r = OptionalDouble.of(values.of(radius));
      return Optional.of(new BoxOutShape(List.of(), middle, r, true, List.of()));
    }
    return b.places().getFirst() instanceof Where.Off off
        ? rebuilt.direction(off.side()).flatMap(u -> fourCornered(b, middle, u, values))
        : Optional.empty();
  }

  private static Optional<BoxOutShape> fourCornered(
      BoxOut b, Point middle, Point u, Values values) {
    Figure tip = b.sizes().get(Size.TIP);
    Figure each = b.sizes().get(Size.EACH);
    if (tip != null) {
      double r = values.of(tip);
      List<Miss> misses = new ArrayList<>();
      if (each != null) {
        String name = String.valueOf(b.number());
        misses.add(
            new Miss(Miss.Kind.BOX_OUT, name, r * Math.sqrt(2), values.of(each), Rebuilt.ON));
      }
      return Optional.of(cornered(middle, u.times(r), u.left().times(r), misses));
    }
    Figure along = b.sizes().getOrDefault(Size.ALONG, each);
    Figure across = b.sizes().getOrDefault(Size.ACROSS, each);
    if (along == null || across == null) {
      return Optional.empty();
    }
    Point x = u.times(values.of(along) / 2);
    Point y = u.left().times(values.of(across) / 2);
    return Optional.of(cornered(middle, x.plus(y), y.minus(x), List.of()));
  }

  /** The figure whose corners are two ways from the middle, and back. */
  private static BoxOutShape cornered(Point middle, Point one, Point next, List<Miss> misses) {
    return new BoxOutShape(
        List.of(middle.plus(one), middle.plus(next), middle.minus(one), middle.minus(next)),
        middle,
        OptionalDouble.empty(),
        false,
        misses);
  }

  private static Point middle(List<Point> points) {
    Point sum = new Point(0, 0);
    for (Point p : points) {
      sum = sum.plus(p);
    }
    return sum.times(1.0 / points.size());
  }

  /** Where a joint that comes from there may end. */
  List<Point> reachedFrom(Point far) {
    return radius.isPresent()
        ? List.of(middle.plus(far.minus(middle).unit().times(radius.getAsDouble())))
        : corners;
  }

  /**
   * How long the filler round it is: all round, or without what lies along the slab's edge,
   * whichever is nearer to what is printed; empty where only its corners are told and its ends are
   * round.
   */
  OptionalDouble around(Collection<Path> sides, double printed) {
    if (radius.isPresent()) {
      return OptionalDouble.of(2 * Math.PI * radius.getAsDouble());
    }
    if (isRounded) {
      return OptionalDouble.empty();
    }
    double whole = 0;
    double inside = 0;
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      whole += a.distance(b);
      inside += sides.stream().anyMatch(s -> runsAlong(s, a, b)) ? 0 : a.distance(b);
    }
    boolean all = Math.abs(whole - printed) <= Math.abs(inside - printed);
    return OptionalDouble.of(all ? whole : inside);
  }

  private static boolean runsAlong(Path side, Point a, Point b) {
    double near = 4 * Rebuilt.ON;
    return side.distance(a) < near
        && side.distance(b) < near
        && side.distance(a.towards(b, 0.5)) < near;
  }
}
