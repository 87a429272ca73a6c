package org.jointwright.designer.hand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Things;
import org.jointwright.designer.state.Viewport;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.Thing;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;

/**
 * Goes about the plan by keys: to the next thing that can be picked, or to the nearest in a
 * direction. Enter picks what is pointed at, and puts down what is picked.
 */
public final class Walk {
  private Walk() {}

  /** The next thing, or the one before, picked; in the order of the plan, round and round. */
  public static Desk on(Desk desk, boolean forward) {
    if (desk.draft().isPresent()) {
      return Drafting.jump(desk, forward);
    }
    if (desk.hand().hold().isPresent()) {
      return desk;
    }
    List<Pick> stops = stops(desk);
    if (stops.isEmpty()) {
      return desk;
    }
    int now = stops.indexOf(desk.picked());
    int n = stops.size();
    int next = now < 0 ? (forward ? 0 : n - 1) : Math.floorMod(now + (forward ? 1 : -1), n);
    return inSight(desk.picking(stops.get(next)), stops.get(next));
  }

  /**
   * The next whole thing, or the one before, picked: past the corners and sides of the one that is
   * picked, or past its joints.
   */
  public static Desk onWhole(Desk desk, boolean forward) {
    if (desk.draft().isPresent() || desk.hand().hold().isPresent()) {
      return desk;
    }
    List<Pick> stops = stops(desk);
    int now = stops.indexOf(desk.picked());
    int n = stops.size();
    return IntStream.rangeClosed(1, n)
        .map(k -> forward ? Math.floorMod(now + k, n) : Math.floorMod((now < 0 ? n : now) - k, n))
        .mapToObj(stops::get)
        .filter(Walk::isWhole)
        .findFirst()
        .map(p -> inSight(desk.picking(p), p))
        .orElse(desk);
  }

  private static boolean isWhole(Pick pick) {
    return switch (pick) {
      case Pick.AtCorner c -> false;
      case Pick.AtEdge e -> false;
      case Pick.AtFeature f -> false;
      case Pick.AtJoint j -> false;
      default -> true;
    };
  }

  /** Pointing at the nearest thing that way. */
  static Desk towards(Desk desk, Point way) {
    Point from = Picks.place(desk.plan(), desk.sight().pointed()).orElse(desk.viewport().centre());
    return stops(desk).stream()
        .filter(p -> !p.equals(desk.sight().pointed()))
        .filter(p -> lies(desk.plan(), p, from, way))
        .min(Comparator.comparingDouble(p -> far(desk.plan(), p, from, way)))
        .map(p -> inSight(desk.withSight(s -> s.pointingAt(p)), p))
        .orElse(desk);
  }

  private static boolean lies(Plan plan, Pick pick, Point from, Point way) {
    return Picks.place(plan, pick)
        .map(p -> p.minus(from))
        .filter(d -> d.dot(way) > 0.5 && d.dot(way) >= Math.abs(d.cross(way)))
        .isPresent();
  }

  /** What lies straight ahead is nearer than what lies aside. */
  private static double far(Plan plan, Pick pick, Point from, Point way) {
    Point d = Picks.place(plan, pick).orElseThrow().minus(from);
    return d.dot(way) + 2 * Math.abs(d.cross(way));
  }

  /** Enter: what is pointed at is picked; what is picked is put down, and pointed at. */
  public static Desk entered(Desk desk) {
    Pick picked = desk.picked();
    if (!picked.equals(Pick.NOTHING)) {
      return desk.picking(Pick.NOTHING).withSight(s -> s.pointingAt(picked));
    }
    Pick pointed = Picks.still(desk.plan(), desk.sight().pointed(), desk.plan());
    return pointed.equals(Pick.NOTHING) ? desk : desk.picking(pointed);
  }

  /** The paper pushed by as little as brings the thing in sight, clear of what is written. */
  private static Desk inSight(Desk desk, Pick pick) {
    Viewport before = desk.viewport();
    Viewport after =
        Picks.room(desk.plan(), pick)
            .filter(b -> fits(b, before.clear()))
            .or(() -> Picks.place(desk.plan(), pick).map(p -> Box.of(p, p)))
            .map(before::showing)
            .orElse(before);
    return after.equals(before) ? desk : desk.withSight(s -> s.with(after, false));
  }

  private static boolean fits(Box box, Box sight) {
    return box.width() <= sight.width() && box.height() <= sight.height();
  }

  private static List<Pick> stops(Desk desk) {
    Plan plan = desk.plan();
    List<Pick> stops = new ArrayList<>();
    switch (desk.sight().step()) {
      case OUTLINE -> {
        for (Thing t : Things.all(plan)) {
          stops.add(Things.pick(List.of(t)));
          if (t instanceof Thing.WholeSlab s) {
            ring(plan, new Ref(s.id(), Ref.OUTLINE, 0), stops);
          } else if (t instanceof Thing.AnOpening o) {
            ring(plan, new Ref(o.slab(), o.opening(), 0), stops);
          }
        }
      }
      case SECTION -> plan.slabs().forEach(s -> stops.add(new Pick.WholeSlab(s.id())));
      case JOINTS -> {
        for (Slab s : plan.slabs()) {
          stops.add(new Pick.WholeSlab(s.id()));
          for (Joint j : s.joints()) {
            stops.add(new Pick.AtJoint(s.id(), j.id()));
          }
        }
      }
      case ORDER, SHEETS -> {}
    }
    return stops;
  }

  private static void ring(Plan plan, Ref ring, List<Pick> stops) {
    Optional<Outline> outline = Picks.outline(plan, ring);
    for (int i = 0; i < outline.map(o -> o.vertices().size()).orElse(0); i++) {
      Ref ref = new Ref(ring.slab(), ring.ring(), i);
      stops.add(new Pick.AtCorner(ref));
      stops.add(new Pick.AtEdge(ref));
      int marks = Picks.setting(plan, ref).map(EdgeSetting::features).map(List::size).orElse(0);
      for (int k = 0; k < marks; k++) {
        stops.add(new Pick.AtFeature(ref, k));
      }
    }
  }
}
