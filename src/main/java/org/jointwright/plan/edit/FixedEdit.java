package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Motion;
import org.jointwright.shape.Point;

/** An edit of a fixed object. */
public sealed interface FixedEdit extends Edit {
  /** Adds a fixed object; its id must be new and its slab there. */
  record Add(FixedObject object) implements FixedEdit {
    @Override
    public Plan applyTo(Plan before) {
      Rings.slab(before, object.slab());
      List<FixedObject> fixed = new ArrayList<>(before.fixed());
      fixed.add(object);
      return before.withFixed(fixed);
    }
  }

  /** Takes a fixed object out. */
  record Remove(String id) implements FixedEdit {
    @Override
    public Plan applyTo(Plan before) {
      return before.withFixed(before.fixed().stream().filter(f -> !f.id().equals(id)).toList());
    }
  }

  /** Moves a fixed object. */
  record Move(String id, Point by) implements FixedEdit {
    @Override
    public Plan applyTo(Plan before) {
      return before.withFixed(
          before.fixed().stream()
              .map(f -> f.id().equals(id) ? Moved.fixed(f, Motion.by(by)) : f)
              .toList());
    }

    @Override
    public Optional<Edit> mergedWith(Edit later) {
      return later instanceof Move m && m.id.equals(id)
          ? Optional.of(new Move(id, by.plus(m.by)))
          : Optional.empty();
    }
  }
}
