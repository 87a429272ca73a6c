package org.jointwright.designer.facts;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Severity;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Papers;
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
    desk.papers()
        .sheets()
        .flatMap(x -> x.files().stream().findFirst())
        .ifPresent(f -> why.add(words.say("window.sheets.where", name(f), folder(f))));
    why.add(words.say("window.sheets.what"));
    why.add(words.say("window.caution"));
    List<Deed> deeds = new ArrayList<>();
    if (isLaid) {
      deeds.add(
          new Deed("write-sheets", words.say("window.deed.sheets"), new Deed.WriteSheets(), false));
      deeds.add(new Deed("print", words.say("window.deed.print"), new Deed.Print(), false));
    }
    desk.papers()
        .sheets()
        .flatMap(Papers.Sheets::shown)
        .ifPresent(
            f ->
                deeds.add(
                    new Deed(
                        "show-sheet",
                        words.say("window.deed.showSheet"),
                        new Deed.ShowFile(f),
                        false)));
    List<Row> rows =
        List.of(
            new Row.Shown(
                "sheet-cut",
                words.say("window.sheets.cut"),
                StepFacts.all(desk, words).getLast().fact()));
    return Facts.saying(
        words.say("window.step.sheets"), words.say("window.kind.sheets"), rows, deeds, why);
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
  }

  private static String folder(Path file) {
    return String.valueOf(file.toAbsolutePath().getParent());
  }
}
