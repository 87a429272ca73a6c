package org.jointwright.command;

import java.util.List;
import org.jointwright.app.Answer;
import org.jointwright.app.NearestKnown;
import org.jointwright.measure.UnitSystem;
import org.jointwright.text.Words;

/** How near the layout of each slab is known to be to the cheapest. */
record NearLines(Answer answer) {
  List<String> lines() {
    Words words = Words.english(UnitSystem.of(answer.plan().unit()));
    return answer.plan().slabs().stream()
        .map(
            s ->
                words.say(
                    "command.joint.near",
                    s.id(),
                    NearestKnown.say(answer, s.id(), words, () -> true)))
        .toList();
  }
}
