package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.state.Desk;
import org.jointwright.text.Words;

/** What can be said while something is drawn. */
record DraftFacts(Drawn what, Words words) {
  Facts facts() {
    return Facts.saying(
        words.say(title()),
        words.say(kind()),
        List.of(),
        List.of(Deed.of("stop-drawing", words.say("window.deed.stopDrawing"), Desk::letGo)),
        said());
  }

  private String title() {
    return switch (what) {
      case SLAB -> "window.draft.title";
      case ZONE -> "window.draft.zone";
      case OLD_JOINT -> "window.draft.oldJoint";
    };
  }

  private String kind() {
    return switch (what) {
      case SLAB -> "window.kind.slab";
      case ZONE -> "window.kind.zone";
      case OLD_JOINT -> "window.kind.given";
    };
  }

  private List<String> said() {
    List<String> said = new ArrayList<>();
    switch (what) {
      case SLAB -> {
        said.add(words.say("window.draft.click"));
        said.add(words.say("window.draft.type"));
      }
      case ZONE -> {
        said.add(words.say("window.draft.zoneWhy"));
        said.add(words.say("window.draft.click"));
        said.add(words.say("window.draft.type"));
      }
      case OLD_JOINT -> said.add(words.say("window.draft.oldJointWhy"));
    }
    said.add(words.say("window.draft.back"));
    said.add(words.say("window.draft.free"));
    return said;
  }
}
