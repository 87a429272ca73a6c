package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Motion;

/**
 * An edit of whole things, one or several at once. What is in a slab that is among them goes with
 * its slab and is not done twice.
 */
public sealed interface ThingEdit extends Edit {
  /** The things. */
  List<Thing> things();

  /** Moves, turns or mirrors them. */
  record Put(List<Thing> things, Motion motion) implements ThingEdit {
    /** Copies the list. */
    public Put {
      things = List.copyOf(things);
    }

    @Override
    public Plan applyTo(Plan before) {
      Plan plan = before;
      for (Thing t : apart(things, before)) {
        plan = put(plan, t, motion);
      }
      return plan;
    }

    @Override
    public Optional<Edit> mergedWith(Edit later) {
      return later instanceof Put p && p.things.equals(things)
          ? Optional.of(new Put(things, motion.then(p.motion)))
          : Optional.empty();
    }
  }

  /** Sets down copies of them, moved, turned or mirrored; the copies get names of their own. */
  record Copy(List<Thing> things, Motion motion) implements ThingEdit {
    /** Copies the list. */
    public Copy {
      things = List.copyOf(things);
    }

    @Override
    public Plan applyTo(Plan before) {
      Plan plan = before;
      for (Thing t : apart(things, before)) {
        plan = copied(plan, t, motion);
      }
      return plan;
    }

    /** The copies that it makes of a plan, in the order of the things. */
    public List<Thing> made(Plan before) {
      List<Thing> made = new ArrayList<>();
      Plan plan = before;
      for (Thing t : apart(things, before)) {
        plan = copied(plan, t, motion);
        made.add(last(plan, t));
      }
      return made;
    }
  }

  /** Takes them out. */
  record TakeOut(List<Thing> things) implements ThingEdit {
    /** Copies the list. */
    public TakeOut {
      things = List.copyOf(things);
    }

    @Override
    public Plan applyTo(Plan before) {
      Plan plan = before;
      // The last first, so that the numbers of the others stay.
      for (Thing t :
          apart(things, before).stream()
              .sorted(Comparator.comparingInt(ThingEdit::number).reversed())
              .toList()) {
        plan = without(t).applyTo(plan);
      }
      return plan;
    }
  }

  private static List<Thing> apart(List<Thing> things, Plan plan) {
    return things.stream()
        .distinct()
        .filter(t -> t.within(plan).filter(s -> things.contains(new Thing.WholeSlab(s))).isEmpty())
        .toList();
  }

  private static int number(Thing thing) {
    return switch (thing) {
      case Thing.WholeSlab s -> 0;
      case Thing.Fixed f -> 0;
      case Thing.AnOpening o -> o.opening();
      case Thing.Zone z -> z.zone();
      case Thing.Given g -> g.joint();
    };
  }

  private static Edit without(Thing thing) {
    return switch (thing) {
      case Thing.WholeSlab s -> new SlabEdit.Remove(s.id());
      case Thing.Fixed f -> new FixedEdit.Remove(f.id());
      case Thing.AnOpening o -> new SlabEdit.RemoveOpening(o.slab(), o.opening());
      case Thing.Zone z -> new ZoneEdit.Remove(z.slab(), z.zone());
      case Thing.Given g -> new GivenEdit.Remove(g.joint());
    };
  }

  private static Plan put(Plan plan, Thing thing, Motion motion) {
    return switch (thing) {
      case Thing.WholeSlab s -> {
        Rings.slab(plan, s.id());
        yield Moved.slab(plan, s.id(), motion);
      }
      case Thing.Fixed f ->
          plan.withFixed(
              plan.fixed().stream()
                  .map(x -> x.id().equals(f.id()) ? Moved.fixed(x, motion) : x)
                  .toList());
      case Thing.AnOpening o ->
          plan.withSlab(
              o.slab(),
              s -> {
                List<Opening> openings = new ArrayList<>(s.openings());
                openings.set(o.opening(), Moved.opening(openings.get(o.opening()), motion));
                return s.withOpenings(openings);
              });
      case Thing.Zone z ->
          plan.withSlab(
              z.slab(),
              s -> {
                List<KeepClear> zones = new ArrayList<>(s.keepClear());
                zones.set(z.zone(), Moved.zone(zones.get(z.zone()), motion));
                return s.withKeepClear(zones);
              });
      case Thing.Given g -> {
        List<GivenJoint> given = new ArrayList<>(plan.given());
        given.set(g.joint(), Moved.given(given.get(g.joint()), motion));
        yield plan.withGiven(given);
      }
    };
  }

  private static Plan copied(Plan plan, Thing thing, Motion motion) {
    return switch (thing) {
      case Thing.WholeSlab s -> slab(plan, Rings.slab(plan, s.id()), motion);
      case Thing.Fixed f -> {
        FixedObject object = plan.fixedObject(f.id()).orElseThrow();
        yield new FixedEdit.Add(
                named(Moved.fixed(object, motion), FreeName.of(plan, f.id()), object.slab()))
            .applyTo(plan);
      }
      case Thing.AnOpening o -> {
        Opening opening = Rings.slab(plan, o.slab()).openings().get(o.opening());
        yield new SlabEdit.AddOpening(o.slab(), Moved.opening(opening, motion)).applyTo(plan);
      }
      case Thing.Zone z -> {
        KeepClear zone = Rings.slab(plan, z.slab()).keepClear().get(z.zone());
        yield new ZoneEdit.Add(z.slab(), Moved.zone(zone, motion)).applyTo(plan);
      }
      case Thing.Given g ->
          new GivenEdit.Add(Moved.given(plan.given().get(g.joint()), motion)).applyTo(plan);
    };
  }

  private static Plan slab(Plan before, Slab slab, Motion motion) {
    String id = FreeName.of(before, slab.id());
    Plan plan = new SlabEdit.Add(Moved.slab(slab, motion).withId(id)).applyTo(before);
    for (FixedObject f : before.fixed()) {
      if (f.slab().equals(slab.id())) {
        String own = FreeName.of(plan, f.id());
        plan = new FixedEdit.Add(named(Moved.fixed(f, motion), own, id)).applyTo(plan);
      }
    }
    return plan;
  }

  private static FixedObject named(FixedObject f, String id, String slab) {
    return new FixedObject(id, slab, f.kind(), f.shape(), f.kept());
  }

  /** What was added last, of the kind of {@code like}. */
  private static Thing last(Plan plan, Thing like) {
    return switch (like) {
      case Thing.WholeSlab s -> new Thing.WholeSlab(plan.slabs().getLast().id());
      case Thing.Fixed f -> new Thing.Fixed(plan.fixed().getLast().id());
      case Thing.AnOpening o ->
          new Thing.AnOpening(o.slab(), Rings.slab(plan, o.slab()).openings().size() - 1);
      case Thing.Zone z ->
          new Thing.Zone(z.slab(), Rings.slab(plan, z.slab()).keepClear().size() - 1);
      case Thing.Given g -> new Thing.Given(plan.given().size() - 1);
    };
  }
}
