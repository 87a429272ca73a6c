package org.jointwright.layout.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jointwright.joint.Meeting;
import org.jointwright.joint.SlabLayout;
import org.jointwright.layout.piece.Limits;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/**
 * Works out how near a slab's layout is to the cheapest of its family: all layouts of rectangles
 * whose joints lie on candidate lines, which are the lines of the layout itself, those through the
 * slab's corners and even divisions of the gaps between. What a layout must also meet beside the
 * slab is left out, which can only make the bound lower.
 */
public final class HowNear {
  /** More tiles are not weighed. */
  private static final int MOST_TILES = 1200;

  /** How many linear programs may be solved. */
  private static final int MOST_TRIES = 150;

  /** A gain under this share counts as none: whole-inch marks may cost as much. */
  private static final double NOTHING = 0.0011;

  /** A joint that leans more than this from end to end is on no candidate line, inches. */
  private static final double LEAN = 0.6;

  private HowNear() {}

  /**
   * How near a layout is to the cheapest.
   *
   * @param plan the plan it is of
   * @param laid the slab's layout
   * @param cost what it costs by the rules, ft
   * @param clean whether it breaks no rule that must be kept
   * @param goOn asked between programs; once it says no, what is known by then is the answer
   */
  public static Nearness of(
      Plan plan, SlabLayout laid, double cost, boolean clean, BooleanSupplier goOn) {
    Slab slab = laid.slab();
    Optional<Nearness.Why> obstacle = obstacle(plan, laid);
    if (obstacle.isPresent()) {
      return new Nearness.Unproved(obstacle.get());
    }
    Frame frame = Frame.of(slab);
    List<Segment> held = held(frame, slab);
    Limits limits = Limits.of(slab);
    for (Mesh.Family family : Mesh.Family.ALL) {
      Mesh mesh = Mesh.of(frame, limits, family, lines(frame, laid));
      List<Tile> tiles = mesh.tiles(held);
      if (tiles.size() <= MOST_TILES) {
        Bands bands = new Bands(mesh, tiles, new Tries(MOST_TRIES, goOn));
        return clean ? near(bands, cost, isAlone(plan, slab)) : broken(bands);
      }
    }
    return new Nearness.Unproved(Nearness.Why.MANY);
  }

  private static Optional<Nearness.Why> obstacle(Plan plan, SlabLayout laid) {
    Slab slab = laid.slab();
    if (!plan.fixedIn(slab.id()).isEmpty() || !laid.boxOuts().isEmpty()) {
      return Optional.of(Nearness.Why.FIXED);
    }
    Optional<Nearness.Why> shape = Frame.obstacle(slab);
    if (shape.isPresent()) {
      return shape;
    }
    for (Joint j : laid.joints()) {
      boolean plain = j.kind() == JointKind.CONTRACTION && j.purpose() != Purpose.CORNER;
      if (!plain && !isAtEdge(laid, j.path().edges().getFirst())) {
        return Optional.of(Nearness.Why.OTHER_JOINTS);
      }
    }
    for (Segment s : held(Frame.of(slab), slab)) {
      Box box = s.box();
      if (Math.min(box.width(), box.height()) > LEAN) {
        return Optional.of(Nearness.Why.HELD);
      }
    }
    return Optional.empty();
  }

  /**
   * The locked joints in the slab's frame; a curved one as its chord, which is none of its lines.
   */
  private static List<Segment> held(Frame frame, Slab slab) {
    return slab.lockedJoints().stream()
        .filter(j -> j.kind() == JointKind.CONTRACTION)
        .flatMap(j -> j.path().edges().stream())
        .map(e -> new Segment(frame.in(e.start()), frame.in(e.end())))
        .toList();
  }

  /** Whether nothing asks more of the slab's joints than the rules for its own panels. */
  private static boolean isAlone(Plan plan, Slab slab) {
    boolean meets =
        Meeting.of(plan).stream()
            .anyMatch(m -> m.first().equals(slab.id()) || m.second().equals(slab.id()));
    return !meets && plan.given().isEmpty() && slab.keepClear().isEmpty();
  }

  private static boolean isAtEdge(SlabLayout laid, Edge edge) {
    Region slab = laid.slab().region();
    Point middle = edge.at(0.5);
    double away = slab.outer().distance(middle);
    for (Ring hole : slab.holes()) {
      away = Math.min(away, hole.distance(middle));
    }
    return away <= Tolerance.LENGTH_INCHES;
  }

  private static Nearness near(Bands bands, double cost, boolean alone) {
    Bands.Cheapest found = bands.find(cost);
    double share = cost == 0 ? 0 : 1 - found.bound() / cost;
    if (share <= NOTHING) {
      return new Nearness.Least();
    }
    return found.bound() > 0
        ? new Nearness.AtMost(share, alone ? 1 - found.known() / cost : 0)
        : new Nearness.Unproved(Nearness.Why.TRIES);
  }

  private static Nearness broken(Bands bands) {
    return bands.find(Double.POSITIVE_INFINITY).bound() == Double.POSITIVE_INFINITY
        ? new Nearness.NoneMeets()
        : new Nearness.Unproved(Nearness.Why.BROKEN);
  }

  /** Where the layout's own joints run, upright ones first. */
  private static List<List<Double>> lines(Frame frame, SlabLayout laid) {
    List<Double> upright = new ArrayList<>();
    List<Double> level = new ArrayList<>();
    for (Joint j : laid.joints()) {
      for (Edge e : j.path().edges()) {
        Box box = Box.of(frame.in(e.start()), frame.in(e.end()));
        if (box.width() < LEAN) {
          upright.add(box.centre().x());
        } else if (box.height() < LEAN) {
          level.add(box.centre().y());
        }
      }
    }
    return List.of(upright, level);
  }
}
