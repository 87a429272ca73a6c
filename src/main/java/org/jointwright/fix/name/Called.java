package org.jointwright.fix.name;

import java.util.List;
import org.jointwright.check.Finding;
import org.jointwright.check.Subject;
import org.jointwright.joint.Numbering;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;

/**
 * What joints are called in sentences: by the numbers that they have on the plan and on its sheets,
 * so that nobody has to know their ids.
 *
 * @param plan the plan with its joints
 * @param numbering the numbers of its joints
 */
public record Called(Plan plan, Numbering numbering) {
  /** The names for the joints of {@code plan}. */
  public static Called in(Plan plan) {
    return new Called(plan, Numbering.of(plan));
  }

  /** What a joint is called; its id where it has no number, as one that is gone has none. */
  public String joint(JointName name) {
    return numbering.of(plan, name.slab(), name.id()).map(n -> n.toString()).orElse(name.id());
  }

  /** What fills the places of a finding's sentence. */
  public Object[] in(Finding finding) {
    List<String> ids =
        finding.joint().isEmpty()
            ? List.of()
            : plan.slab(finding.slab()).stream()
                .flatMap(s -> s.joints().stream())
                .map(Joint::id)
                .toList();
    return in(
        finding.arguments().stream()
            .map(
                a ->
                    a instanceof String id && ids.contains(id)
                        ? name(finding.slab(), id)
                        : a instanceof Subject.OnJoint j ? name(finding.slab(), j.joint()) : a)
            .toList());
  }

  private static Object name(String slab, String id) {
    return new JointName(slab, id);
  }

  /** What fills the places of a fix's sentence. */
  public Object[] in(List<Object> arguments) {
    return arguments.stream().map(a -> a instanceof JointName j ? joint(j) : a).toArray();
  }
}
