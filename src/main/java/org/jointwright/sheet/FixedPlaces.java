package org.jointwright.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.joint.Numbering.Item;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Tape;
import org.jointwright.shape.EnclosingRectangle;
import org.jointwright.shape.Hull;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** How large the objects in a box-out are and where their middles are: they are set before it. */
record FixedPlaces(Facts facts, Item item) {
  /** Two sides tell a point well where they turn from each other by this at least: 30 degrees. */
  private static final double TURN = 0.5;

  /**
   * An object.
   *
   * @param size what it is and how large
   * @param middle the two sides that its middle is told from; none where that is not told
   */
  record Fixture(String size, List<From> middle) {}

  /** How far the middle is from a side, square to it, inches. */
  record From(Tape side, double off) {}

  /**
   * The objects one by one.
   *
   * @param told the middle of the box-out where that is told; an object that shares it needs no
   *     more
   */
  List<Fixture> all(Optional<Point> told) {
    return facts.plan().boxedOut(item.slab(), item.boxOut().orElseThrow()).stream()
        .map(f -> fixture(f, told))
        .toList();
  }

  private Fixture fixture(FixedObject object, Optional<Point> told) {
    Ring ring = object.shape().ring();
    String kind = facts.say("fixed." + object.kind().name());
    Optional<BoxOutShape.Round> round = BoxOutShape.round(ring);
    EnclosingRectangle square = EnclosingRectangle.of(ring);
    String size =
        round
            .map(r -> facts.say("boxOut.object.round", kind, facts.print(2 * r.radius())))
            .orElseGet(
                () ->
                    facts.say(
                        "boxOut.object",
                        kind,
                        facts.print(square.longSide()),
                        facts.print(square.shortSide())));
    Point middle =
        round.map(BoxOutShape.Round::centre).orElseGet(() -> middle(ring, square.direction()));
    boolean isTold = told.filter(p -> p.distance(middle) < Sides.ON).isPresent();
    return new Fixture(size, isTold ? List.of() : sides(middle));
  }

  private static Point middle(Ring ring, Point u) {
    List<Point> hull = Hull.of(ring).points();
    Point v = u.left();
    var along = hull.stream().mapToDouble(p -> p.dot(u)).summaryStatistics();
    var across = hull.stream().mapToDouble(p -> p.dot(v)).summaryStatistics();
    return u.times((along.getMin() + along.getMax()) / 2)
        .plus(v.times((across.getMin() + across.getMax()) / 2));
  }

  /** The nearest two sides that a tape reaches square from the point and that are not parallel. */
  private List<From> sides(Point p) {
    Slab slab = facts.plan().slab(item.slab()).orElseThrow();
    if (!slab.outline().ring().contains(p)) {
      return List.of();
    }
    List<From> near =
        facts.lettering().tapes().stream()
            .filter(t -> t.isStraight() && !t.from().equals(t.to()) && reaches(t, p, slab))
            .map(t -> new From(t, Math.abs(unit(t).cross(p.minus(t.from().at())))))
            .sorted(Comparator.comparingDouble(From::off))
            .toList();
    return near.stream()
        .filter(f -> Math.abs(unit(f.side()).cross(unit(near.getFirst().side()))) >= TURN)
        .findFirst()
        .map(other -> List.of(near.getFirst(), other))
        .orElse(List.of());
  }

  /** Whether the foot of the square from the point is on the side, and that is an edge there. */
  private static boolean reaches(Tape t, Point p, Slab slab) {
    double along = unit(t).dot(p.minus(t.from().at()));
    Point foot = t.from().at().plus(unit(t).times(along));
    return along >= 0
        && along <= t.from().at().distance(t.to().at())
        && slab.outline().ring().distance(foot) < Sides.ON;
  }

  private static Point unit(Tape t) {
    return t.to().at().minus(t.from().at()).unit();
  }
}
