package org.jointwright.designer.facts;

import java.util.Optional;
import org.jointwright.drawing.Numbering;
import org.jointwright.plan.Corner;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/**
 * What the parts of a plan are called: sides by their corners' letters, joints by their numbers.
 */
public record Names(Plan plan, Words words) {
  /** The name of an edge. */
  String side(Edge edge) {
    Lettering lettering = Lettering.of(plan);
    Optional<String> ends =
        lettering
            .cornerAt(edge.start())
            .flatMap(
                a ->
                    lettering
                        .cornerAt(edge.end())
                        .map(b -> words.say("window.name.side", a.letter(), b.letter())));
    return ends.or(
            () ->
                lettering.tapesAt(edge.at(0.5), Lettering.SAME_PLACE).stream()
                    .findFirst()
                    .map(t -> words.say("window.name.side", t.from().letter(), t.to().letter())))
        .orElse(words.say("window.name.someSide"));
  }

  /** The name of the corner at a point. */
  String corner(Point at) {
    return Lettering.of(plan)
        .cornerAt(at)
        .map(Corner::letter)
        .map(l -> words.say("window.name.corner", l))
        .orElse(words.say("window.name.someCorner"));
  }

  /** The number of a joint, empty where it has none. */
  public Optional<Integer> number(String slab, Joint joint) {
    return Numbering.of(plan).of(slab, joint).map(Numbering.Item::number);
  }

  /** The name of a joint. */
  String joint(String slab, Joint joint) {
    return number(slab, joint)
        .map(n -> words.say("window.name.joint", Integer.toString(n)))
        .orElse(words.say("window.name.someJoint"));
  }
}
