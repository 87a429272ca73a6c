package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Motion;
import org.jointwright.shape.Point;

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

  /** Moves a given joint, by its number in the plan. */
  record Move(int joint, Point by) implements GivenEdit {
    @Override
    public Plan applyTo(Plan before) {
      List<GivenJoint> given = new ArrayList<>(before.given());
      given.set(known(before, joint), Moved.given(before.given().get(joint), Motion.by(by)));
      return before.withGiven(given);
    }

    @Override
    public Optional<Edit> mergedWith(Edit later) {
      return later instanceof Move m && m.joint == joint
          ? Optional.of(new Move(joint, by.plus(m.by)))
          : Optional.empty();
    }
  }

  /** Takes a given joint out, by its number in the plan. */
  record Remove(int joint) implements GivenEdit {
    @Override
    public Plan applyTo(Plan before) {
      List<GivenJoint> given = new ArrayList<>(before.given());
      given.remove(known(before, joint));
      return before.withGiven(given);
    }
  }

  private static int known(Plan plan, int joint) {
    if (joint < 0 || joint >= plan.given().size()) {
      throw new IllegalArgumentException("the plan has no given joint " + joint);
    }
    return joint;
  }
}
