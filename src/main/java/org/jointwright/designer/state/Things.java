package org.jointwright.designer.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Thing;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Ring;

/** The whole things that are picked, and where they lie. */
public final class Things {
  private Things() {}

  /** The whole things picked; none where a part of one is picked, such as a corner. */
  public static List<Thing> of(Pick pick) {
    return switch (pick) {
      case Pick.WholeSlab s -> List.of(new Thing.WholeSlab(s.slab()));
      case Pick.AtOpening o -> List.of(new Thing.AnOpening(o.slab(), o.opening()));
      case Pick.AtFixed f -> List.of(new Thing.Fixed(f.id()));
      case Pick.AtZone z -> List.of(new Thing.Zone(z.slab(), z.zone()));
      case Pick.AtGiven g -> List.of(new Thing.Given(g.joint()));
      case Pick.Several s -> s.things();
      case Pick.Nothing n -> List.of();
      case Pick.AtCorner c -> List.of();
      case Pick.AtEdge e -> List.of();
      case Pick.AtJoint j -> List.of();
      case Pick.AtFeature f -> List.of();
      case Pick.AtPhoto p -> List.of();
      case Pick.Scaling s -> List.of();
    };
  }

  /** The pick of these things: nothing, the one, or several. */
  public static Pick pick(List<Thing> things) {
    if (things.isEmpty()) {
      return Pick.NOTHING;
    }
    return things.size() > 1 ? new Pick.Several(things) : one(things.getFirst());
  }

  private static Pick one(Thing thing) {
    return switch (thing) {
      case Thing.WholeSlab s -> new Pick.WholeSlab(s.id());
      case Thing.AnOpening o -> new Pick.AtOpening(o.slab(), o.opening());
      case Thing.Fixed f -> new Pick.AtFixed(f.id());
      case Thing.Zone z -> new Pick.AtZone(z.slab(), z.zone());
      case Thing.Given g -> new Pick.AtGiven(g.joint());
    };
  }

  /** With the things of {@code more} picked too, or no longer where all of them were. */
  public static Pick toggled(Pick picked, Pick more) {
    List<Thing> things = new ArrayList<>(of(picked));
    List<Thing> others = of(more);
    if (things.containsAll(others)) {
      things.removeAll(others);
    } else {
      others.stream().filter(t -> !things.contains(t)).forEach(things::add);
    }
    return pick(things);
  }

  /** Every whole thing of a plan: each slab with what is in it, then the old joints. */
  public static List<Thing> all(Plan plan) {
    List<Thing> all = new ArrayList<>();
    for (Slab s : plan.slabs()) {
      all.add(new Thing.WholeSlab(s.id()));
      for (int i = 0; i < s.openings().size(); i++) {
        all.add(new Thing.AnOpening(s.id(), i));
      }
      plan.fixed().stream()
          .filter(f -> f.slab().equals(s.id()))
          .forEach(f -> all.add(new Thing.Fixed(f.id())));
      for (int i = 0; i < s.keepClear().size(); i++) {
        all.add(new Thing.Zone(s.id(), i));
      }
    }
    for (int i = 0; i < plan.given().size(); i++) {
      all.add(new Thing.Given(i));
    }
    return all;
  }

  /** The line that bounds a thing, or that it is; empty where the plan does not hold it. */
  public static Optional<Path> line(Plan plan, Thing thing) {
    if (!thing.isIn(plan)) {
      return Optional.empty();
    }
    return Optional.of(
        switch (thing) {
          case Thing.WholeSlab s -> round(slab(plan, s.id()).outline().ring());
          case Thing.AnOpening o ->
              round(slab(plan, o.slab()).openings().get(o.opening()).outline().ring());
          case Thing.Fixed f ->
              round(plan.fixedObject(f.id()).map(FixedObject::shape).orElseThrow().ring());
          case Thing.Zone z ->
              round(slab(plan, z.slab()).keepClear().get(z.zone()).outline().ring());
          case Thing.Given g -> plan.given().get(g.joint()).path();
        });
  }

  /** The box round things; empty where there are none. */
  public static Optional<Box> box(Plan plan, List<Thing> things) {
    return things.stream()
        .flatMap(t -> line(plan, t).stream())
        .flatMap(p -> p.edges().stream())
        .map(Edge::box)
        .reduce(Box::with);
  }

  private static Slab slab(Plan plan, String id) {
    return plan.slab(id).orElseThrow();
  }

  private static Path round(Ring ring) {
    return new Path(ring.edges());
  }
}
