package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.plan.Corner;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Purpose;
import org.jointwright.text.Words;

/** Why a joint is there, from what it was laid for and what it starts from. */
record Why(Desk desk, String slab, Joint joint, Words words) {
  List<String> paragraphs() {
    List<String> out = new ArrayList<>();
    out.add(words.say("window.why.title"));
    Lettering lettering = Lettering.of(desk.plan());
    Optional<Corner> start =
        lettering.cornerAt(joint.path().start()).or(() -> lettering.cornerAt(joint.path().end()));
    out.add(
        switch (joint.purpose()) {
          case SPACING -> words.say("window.why.spacing", slab);
          case INSIDE_CORNER ->
              start
                  .map(c -> words.say("window.why.insideCorner", c.letter()))
                  .orElse(words.say("window.why.someInsideCorner"));
          case BOX_OUT -> words.say("window.why.boxOut");
          case ISOLATION -> words.say("window.why.isolation");
          case SHARED_EDGE -> words.say("window.why.sharedEdge");
          case CORNER -> words.say("window.why.corner");
        });
    if (joint.purpose() == Purpose.INSIDE_CORNER && start.isPresent()) {
      out.add(words.say("window.why.crack"));
    }
    if (joint.locked()) {
      out.add(words.say("window.why.locked"));
    }
    return out;
  }
}
