package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Motion;
import org.jointwright.shape.Point;

/** An edit of the zones of a slab where no new joint may run. */
public sealed interface ZoneEdit extends Edit {
  /** Adds a zone. */
  record Add(String slab, KeepClear zone) implements ZoneEdit {
    @Override
    public Plan applyTo(Plan before) {
      return changed(before, slab, (s, zones) -> zones.add(zone));
    }
  }

  /** Moves a zone, by its number in the slab. */
  record Move(String slab, int zone, Point by) implements ZoneEdit {
    @Override
    public Plan applyTo(Plan before) {
      return changed(
          before,
          slab,
          (s, zones) ->
              zones.set(known(s, zone), Moved.zone(s.keepClear().get(zone), Motion.by(by))));
    }

    @Override
    public Optional<Edit> mergedWith(Edit later) {
      return later instanceof Move m && m.slab.equals(slab) && m.zone == zone
          ? Optional.of(new Move(slab, zone, by.plus(m.by)))
          : Optional.empty();
    }
  }

  /** Takes a zone out, by its number in the slab. */
  record Remove(String slab, int zone) implements ZoneEdit {
    @Override
    public Plan applyTo(Plan before) {
      return changed(before, slab, (s, zones) -> zones.remove(known(s, zone)));
    }
  }

  private static Plan changed(Plan before, String slab, BiConsumer<Slab, List<KeepClear>> change) {
    return before.withSlab(
        slab,
        s -> {
          List<KeepClear> zones = new ArrayList<>(s.keepClear());
          change.accept(s, zones);
          return s.withKeepClear(zones);
        });
  }

  private static int known(Slab slab, int zone) {
    if (zone < 0 || zone >= slab.keepClear().size()) {
      throw new IllegalArgumentException("slab " + slab.id() + " has no zone " + zone);
    }
    return zone;
  }
}
