package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.facts.Facts.Kind;
import org.jointwright.designer.facts.Facts.Note;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.reason.Origin;
import org.jointwright.reason.Reason;
import org.jointwright.reason.words.ReasonWords;
import org.jointwright.text.Words;

/** Why the joint that is picked is there, once that is worked out. */
record Why(Desk desk, Pick.AtJoint pick, Words words) {
  /** More origins than this are no longer read. Marks stand in the rows above and are left out. */
  private static final int MOST = 3;

  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    notes.add(new Note(Kind.TITLE, words.say("window.why.title")));
    Optional<Reason> reason = desk.laying().whyHere(pick);
    if (reason.isEmpty()) {
      notes.add(new Note(Kind.QUIET, words.say("window.why.working")));
      return notes;
    }
    ReasonWords say = ReasonWords.byNumber(desk.plan(), words);
    reason.get().origins().stream()
        .filter(o -> !(o instanceof Origin.WholeMark) && say.isNews(reason.get(), o))
        .map(o -> say.origin(reason.get(), o))
        .distinct()
        .limit(MOST)
        .forEach(t -> notes.add(new Note(Kind.BODY, t)));
    say.without(reason.get()).forEach(t -> notes.add(new Note(Kind.BODY, t)));
    say.crack(reason.get()).ifPresent(t -> notes.add(new Note(Kind.CRACK, t)));
    say.rule(reason.get()).ifPresent(t -> notes.add(new Note(Kind.QUIET, t)));
    return notes;
  }
}
