package org.jointwright.cases;

import org.jointwright.joint.Layouts;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.plan.Plan;

/**
 * A case laid by the engine, beside the best layout known.
 *
 * @param of the case
 * @param ours what the engine laid
 * @param best what is known
 */
record CostRow(OpenCase of, Measured ours, Measured best) {
  /** Lays the case and measures both layouts. */
  static CostRow lay(OpenCase open) {
    Plan asked = open.plan();
    return new CostRow(
        open,
        Measured.of(asked, LayoutEngine.lay(asked)),
        Measured.of(asked, Layouts.of(open.reference())));
  }

  /** Whether costs may be compared: a layout that breaks a rule may be cheap for it. */
  boolean comparable() {
    return ours.broken().isEmpty() && best.broken().isEmpty();
  }

  /** Our cost over the best known; 1 where neither has a joint. */
  double ratio() {
    return best.cost() == 0 && ours.cost() == 0 ? 1 : ours.cost() / best.cost();
  }
}
