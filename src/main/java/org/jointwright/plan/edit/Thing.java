package org.jointwright.plan.edit;

import java.util.Optional;
import org.jointwright.plan.Plan;

/** Something of a plan that is moved, copied or taken out as a whole. */
public sealed interface Thing {
  /** A slab with all that is in it. */
  record WholeSlab(String id) implements Thing {}

  /** An opening, by its number in its slab. */
  record AnOpening(String slab, int opening) implements Thing {}

  /** A fixed object. */
  record Fixed(String id) implements Thing {}

  /** A zone that is kept clear, by its number in its slab. */
  record Zone(String slab, int zone) implements Thing {}

  /** An old joint beside the slabs, by its number in the plan. */
  record Given(int joint) implements Thing {}

  /** Whether the plan holds it. */
  default boolean isIn(Plan plan) {
    return switch (this) {
      case WholeSlab s -> plan.slab(s.id).isPresent();
      case AnOpening o ->
          plan.slab(o.slab).filter(s -> o.opening < s.openings().size()).isPresent();
      case Fixed f -> plan.fixedObject(f.id).isPresent();
      case Zone z -> plan.slab(z.slab).filter(s -> z.zone < s.keepClear().size()).isPresent();
      case Given g -> g.joint < plan.given().size();
    };
  }

  /** The slab that it is in; empty for a slab itself and for what is in none. */
  default Optional<String> within(Plan plan) {
    return switch (this) {
      case WholeSlab s -> Optional.empty();
      case AnOpening o -> Optional.of(o.slab);
      case Fixed f -> plan.fixedObject(f.id).map(x -> x.slab());
      case Zone z -> Optional.of(z.slab);
      case Given g -> Optional.empty();
    };
  }
}
