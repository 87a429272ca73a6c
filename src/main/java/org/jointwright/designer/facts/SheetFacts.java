package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Severity;
import org.jointwright.designer.state.Desk;
import org.jointwright.text.Words;

/** What there is to write for the crew, and the caution that goes with it. */
record SheetFacts(Desk desk, Words words) {
  Facts facts() {
    boolean isLaid = desk.plan().isLaid();
    long musts = desk.laying().laid().map(l -> l.judgement().of(Severity.MUST).size()).orElse(0);
    List<String> why = new ArrayList<>();
    if (!isLaid) {
      why.add(words.say("window.sheets.noJoints"));
    } else if (musts > 0) {
      why.add(words.say("window.sheets.broken", musts));
    }
    why.add(words.say("window.sheets.what"));
    why.add(words.say("window.caution"));
    List<Deed> deeds =
        isLaid
            ? List.of(
                new Deed(
                    "write-sheets", words.say("window.deed.sheets"), new Deed.WriteSheets(), false))
            : List.of();
    List<Row> rows =
        List.of(
            new Row.Shown(
                "sheet-cut",
                words.say("window.sheets.cut"),
                words.say(isLaid ? "window.sheets.ready" : "window.sheets.open")));
    return Facts.saying(
        words.say("window.step.sheets"), words.say("window.kind.sheets"), rows, deeds, why);
  }
}
