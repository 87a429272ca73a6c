package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Plan;

/** An edit of the zones of a slab where no new joint may run. */
public sealed interface ZoneEdit extends Edit {
  /** Adds a zone. */
  record Add(String slab, KeepClear zone) implements ZoneEdit {
    @Override
    public Plan applyTo(Plan before) {
      return before.withSlab(
          slab,
          s -> {
            List<KeepClear> zones = new ArrayList<>(s.keepClear());
            zones.add(zone);
            return s.withKeepClear(zones);
          });
    }
  }

  /** Takes a zone out, by its number in the slab. */
  record Remove(String slab, int zone) implements ZoneEdit {
    @Override
    public Plan applyTo(Plan before) {
      return before.withSlab(
          slab,
          s -> {
            if (zone < 0 || zone >= s.keepClear().size()) {
              throw new IllegalArgumentException("slab " + slab + " has no zone " + zone);
            }
            List<KeepClear> zones = new ArrayList<>(s.keepClear());
            zones.remove(zone);
            return s.withKeepClear(zones);
          });
    }
  }
}
