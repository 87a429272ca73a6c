package org.jointwright.designer.state;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Tape;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * Where an end of a joint stands on a side: its running mark.
 *
 * @param tape the side's tape
 * @param at its distance from the tape's first corner, inches
 * @param place the end itself
 * @param isStart whether it is the joint's start
 */
public record JointMark(Tape tape, double at, Point place, boolean isStart) {
  /** An end this near to a side stands on it; inches. */
  private static final double ON = 0.5;

  /** The mark of one end of a joint; empty where it stands at a corner or on no side. */
  public static Optional<JointMark> of(Plan plan, Lettering lettering, Joint joint, boolean start) {
    Point end = start ? joint.path().start() : joint.path().end();
    if (lettering.cornerAt(end).isPresent()) {
      return Optional.empty();
    }
    return lettering.tapesAt(end, ON).stream()
        .min(Comparator.comparingDouble(t -> t.path().distance(end)))
        .map(t -> new JointMark(t, t.distanceTo(end), end, start));
  }

  /** The mark of the end that has one, the start first. */
  public static Optional<JointMark> either(Plan plan, Lettering lettering, Joint joint) {
    return of(plan, lettering, joint, true).or(() -> of(plan, lettering, joint, false));
  }

  /** A stretch of the tape that goes on from a mark: to the next joint, or to the corner. */
  public record Onward(double length, Optional<Joint> to, String slab) {}

  /** How far the tape goes on to the next joint, or to its end. */
  public Onward onward(Plan plan, Joint self) {
    Onward best = new Onward(tape.length() - at, Optional.empty(), tape.slab());
    Box about =
        tape.path().edges().stream().map(Edge::box).reduce(Box::with).orElse(Box.ALL).grown(ON);
    for (Slab s : plan.slabs()) {
      for (Joint j : s.joints()) {
        if (j.kind() == JointKind.ISOLATION
            || (j.id().equals(self.id()) && s.joints().contains(self))) {
          continue;
        }
        for (Point p : List.of(j.path().start(), j.path().end())) {
          // Most of a large plan lies nowhere near.
          boolean isOn = about.holds(p) && tape.carries(p, ON);
          double on = isOn ? tape.distanceTo(p) - at : -1;
          if (on > ON && on < best.length()) {
            best = new Onward(on, Optional.of(j), s.id());
          }
        }
      }
    }
    return best;
  }
}
