package org.jointwright.designer.facts;

import java.util.Optional;
import org.jointwright.app.Sides;
import org.jointwright.joint.Numbering;
import org.jointwright.plan.Joint;
import org.jointwright.plan.LetteredCorner;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.plan.edit.Thing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/**
 * What the parts of a plan are called: sides by their corners' letters, joints by their numbers.
 */
public record Names(Plan plan, Words words) {
  /** The name of an edge. */
  String side(Edge edge) {
    String ends = ends(edge);
    return ends.isEmpty() ? words.say("window.name.someSide") : words.say("window.name.side", ends);
  }

  /** The letters at the ends of an edge, or of the side that it is a part of. */
  String ends(Edge edge) {
    return Sides.letters(plan, edge);
  }

  /** The letter of a side’s first corner, from which it is measured. */
  String first(Edge edge) {
    return Lettering.of(plan)
        .cornerAt(edge.start())
        .map(LetteredCorner::letter)
        .orElseGet(() -> words.say("window.feature.firstCorner"));
  }

  /** The name of the corner at a point. */
  String corner(Point at) {
    return Lettering.of(plan)
        .cornerAt(at)
        .map(LetteredCorner::letter)
        .map(l -> words.say("window.name.corner", l))
        .orElse(words.say("window.name.someCorner"));
  }

  /** The number of a joint, empty where it has none. */
  public Optional<Integer> number(String slab, Joint joint) {
    return Numbering.of(plan).of(slab, joint).map(Numbering.Item::number);
  }

  /** What a whole thing is called in a list, with the slab that it is in. */
  public static String listed(Thing thing, Words words) {
    return switch (thing) {
      case Thing.AnOpening o -> words.say("window.things.in", thing(thing, words), o.slab());
      case Thing.Zone z -> words.say("window.things.in", thing(thing, words), z.slab());
      case Thing.WholeSlab s -> s.id();
      case Thing.Fixed f -> f.id();
      case Thing.Given g -> thing(thing, words);
    };
  }

  /** What a whole thing is called among others. */
  static String thing(Thing thing, Words words) {
    return switch (thing) {
      case Thing.WholeSlab s -> s.id();
      case Thing.Fixed f -> f.id();
      case Thing.AnOpening o -> words.say("window.thing.opening");
      case Thing.Zone z -> words.say("window.thing.zone");
      case Thing.Given g -> words.say("window.thing.given");
    };
  }

  /** The name of a joint. */
  String joint(String slab, Joint joint) {
    return number(slab, joint)
        .map(n -> words.say("window.name.joint", Integer.toString(n)))
        .orElse(words.say("window.name.someJoint"));
  }
}
