package org.jointwright.reason.words;

import org.jointwright.joint.Source;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Tape;
import org.jointwright.shape.Edge;
import org.jointwright.text.Words;

/** What the lines of a slab are called within a sentence. */
record LineNames(Plan plan, String slab, Lettering lettering, Words words, JointName joints) {
  String of(Source line) {
    return switch (line) {
      case Source.OnJoint j -> joints.of(slab, j.joint());
      case Source.OnBoxOut b -> words.say("reason.line.boxOut", object(b.fixed()));
      case Source.OnOutline e ->
          plan.slab(slab)
              .map(s -> side(s.outline().ring().edges().get(e.edge())))
              .orElseGet(() -> words.say("reason.line.someSide"));
      case Source.OnOpening e ->
          plan.slab(slab)
              .map(s -> side(edge(s, e)))
              .orElseGet(() -> words.say("reason.line.someSide"));
    };
  }

  /** What a box-out is round: an object, or all that share its box-out. */
  String object(String fixed) {
    return plan.slab(slab).stream()
        .flatMap(s -> s.boxOuts().stream())
        .filter(b -> b.fixed().equals(fixed))
        .findFirst()
        .map(b -> plan.boxedOut(slab, b))
        .filter(all -> all.size() > 1)
        .map(all -> all.stream().map(FixedObject::id).reduce(this::and).orElseThrow())
        .orElse(fixed);
  }

  private String and(String some, String one) {
    return words.say("reason.line.and", some, one);
  }

  /** Openings' edges are counted counter-clockwise, whichever way they were drawn. */
  private static Edge edge(Slab slab, Source.OnOpening e) {
    Opening o = slab.openings().get(e.opening());
    return o.outline().ring().counterClockwise().edges().get(e.edge());
  }

  private String side(Edge edge) {
    return lettering.tapesAt(edge.at(0.5), Lettering.SAME_PLACE).stream()
        .findFirst()
        .map(Tape::name)
        .map(n -> words.say("reason.line.side", n))
        .orElseGet(() -> words.say("reason.line.someSide"));
  }
}
