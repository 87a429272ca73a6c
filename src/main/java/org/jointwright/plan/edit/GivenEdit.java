package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.Plan;

/** An edit of the joints that are there already beside the slabs. */
public sealed interface GivenEdit extends Edit {
  /** Adds a given joint. */
  record Add(GivenJoint joint) implements GivenEdit {
    @Override
    public Plan applyTo(Plan before) {
      List<GivenJoint> given = new ArrayList<>(before.given());
      given.add(joint);
      return before.withGiven(given);
    }
  }

  /** Takes a given joint out, by its number in the plan. */
  record Remove(int joint) implements GivenEdit {
    @Override
    public Plan applyTo(Plan before) {
      if (joint < 0 || joint >= before.given().size()) {
        throw new IllegalArgumentException("the plan has no given joint " + joint);
      }
      List<GivenJoint> given = new ArrayList<>(before.given());
      given.remove(joint);
      return before.withGiven(given);
    }
  }
}
