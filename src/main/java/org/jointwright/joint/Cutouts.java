package org.jointwright.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.practice.BoxOuts;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Traced;

/**
 * What is left out of a slab round its fixed objects.
 *
 * <p>A box-out that the plan lists is taken as it stands. Round an object that has none the piece
 * that isolation joints enclose is left out; where there is no such piece the object itself, since
 * no concrete is where it stands.
 */
public final class Cutouts {
  /** Isolation joints farther from the object than this enclose no box-out, inches. */
  private static final double FARTHEST = BoxOuts.REACH.value().inches() + Tolerance.LENGTH_INCHES;

  private Cutouts() {}

  /** The pieces left out of a slab, those that the plan lists first. */
  public static List<Cutout> of(Plan plan, Slab slab) {
    List<FixedObject> objects =
        plan.fixedIn(slab.id()).stream().filter(f -> standsIn(slab, f)).toList();
    List<Cutout> cutouts = new ArrayList<>();
    for (BoxOut b : slab.boxOuts()) {
      if (objects.stream().anyMatch(f -> f.id().equals(b.fixed()))) {
        cutouts.add(listed(b));
      }
    }
    for (FixedObject f : objects) {
      if (slab.boxOuts().stream().noneMatch(b -> b.fixed().equals(f.id()))) {
        cutouts.add(new Cutout(f.id(), enclosed(slab, f.shape().ring()), false));
      }
    }
    return cutouts;
  }

  /** The box-outs that a slab lists, whatever they are for. */
  static List<Cutout> listedIn(Slab slab) {
    return slab.boxOuts().stream().map(Cutouts::listed).toList();
  }

  private static Cutout listed(BoxOut b) {
    return new Cutout(b.fixed(), Traced.ring(b.outline().ring().counterClockwise()), true);
  }

  /** Whether a fixed object takes any ground of the slab; what only touches it takes none. */
  public static boolean standsIn(Slab slab, FixedObject object) {
    Region region = slab.region();
    Ring ring = object.shape().ring();
    return ring.edges().stream().anyMatch(e -> runsIn(region, e))
        || slab.outline().ring().vertices().stream().anyMatch(p -> isAmid(ring, p));
  }

  private static boolean isAmid(Ring ring, Point p) {
    return ring.contains(p) && ring.distance(p) > Noding.SAME;
  }

  /** Whether any stretch of an edge runs inside a region: a long drain may end beyond it. */
  private static boolean runsIn(Region region, Edge edge) {
    TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, 1.0));
    Stream.concat(Stream.of(region.outer()), region.holes().stream())
        .flatMap(r -> r.edges().stream())
        .flatMap(line -> Crossing.of(edge, line).stream())
        .forEach(c -> cuts.add(c.first()));
    double from = 0;
    for (double to : cuts.tailSet(0.0, false)) {
      Point p = edge.at((from + to) / 2);
      if (isAmid(region.outer(), p)
          && region.holes().stream().allMatch(h -> !h.contains(p) && h.distance(p) > Noding.SAME)) {
        return true;
      }
      from = to;
    }
    return false;
  }

  private static Ring enclosed(Slab slab, Ring object) {
    List<Joint> filler =
        slab.joints().stream().filter(j -> j.kind() == JointKind.ISOLATION).toList();
    if (filler.isEmpty()) {
      return object;
    }
    List<Panel> pieces = Layouts.of(slab.withLaid(filler, List.of())).panels();
    List<Ring> round =
        pieces.stream().filter(panel -> touches(panel.region(), object)).map(Panel::ring).toList();
    // What is more than half of the slab is the slab, however small that is.
    double most = slab.region().area() / 2;
    boolean near =
        round.size() == 1
            && round.getFirst().area() <= most
            && round.getFirst().vertices().stream()
                .allMatch(p -> object.contains(p) || object.distance(p) <= FARTHEST);
    return near ? round.getFirst() : object;
  }

  private static boolean touches(Region panel, Ring object) {
    for (Edge e : object.edges()) {
      if (deepIn(panel, e.at(0.5)) || deepIn(panel, e.start())) {
        return true;
      }
    }
    return panel.outer().vertices().stream()
        .anyMatch(p -> object.contains(p) && object.distance(p) > Lines.REACH);
  }

  private static boolean deepIn(Region panel, Point p) {
    return panel.contains(p) && panel.outer().distance(p) > Lines.REACH;
  }
}
