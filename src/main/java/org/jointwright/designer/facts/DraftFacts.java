package org.jointwright.designer.facts;

import java.util.List;
import org.jointwright.designer.state.Desk;
import org.jointwright.text.Words;

/** What can be said while an outline is drawn. */
record DraftFacts(Words words) {
  Facts facts() {
    return Facts.saying(
        words.say("window.draft.title"),
        words.say("window.kind.slab"),
        List.of(),
        List.of(Deed.of("stop-drawing", words.say("window.deed.stopDrawing"), Desk::letGo)),
        List.of(
            words.say("window.draft.click"),
            words.say("window.draft.type"),
            words.say("window.draft.back"),
            words.say("window.draft.free")));
  }
}
