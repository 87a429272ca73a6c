package org.jointwright.designer.facts;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jointwright.app.SheetKind;
import org.jointwright.app.Sheets;
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
    return Facts.saying(
        words.say("window.step.sheets"), words.say("window.kind.sheets"), rows(), deeds, why);
  }

  /** How far they are, which sheets are wanted, and on what paper. */
  private List<Row> rows() {
    Papers.Setup setup = desk.papers().setup();
    List<Row> rows = new ArrayList<>();
    rows.add(
        new Row.Shown(
            "sheet-state",
            words.say("window.sheets.state"),
            StepFacts.all(desk, words).getLast().fact()));
    for (SheetKind kind : SheetKind.values()) {
      rows.add(
          new Row.Tick(
              "sheet-" + kind.whom(),
              words.say(kind.title()),
              setup.kinds().contains(kind),
              on -> d -> d.wanting(d.papers().setup().with(kind, on))));
    }
    if (setup.kinds().contains(SheetKind.PLANT)) {
      rows.add(
          new Row.Tick(
              "sheet-how",
              words.say("window.sheets.how"),
              setup.how(),
              on -> d -> d.wanting(d.papers().setup().saying(on))));
    }
    List<String> papers = Sheets.papers();
    rows.add(
        new Row.Choice(
            "sheet-paper",
            words.say("window.sheets.paper"),
            papers.stream().map(p -> words.say("window.paper." + p)).toList(),
            papers.indexOf(setup.paper(words.units())),
            i -> d -> d.wanting(d.papers().setup().on(papers.get(i)))));
    return rows;
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
  }

  private static String folder(Path file) {
    return String.valueOf(file.toAbsolutePath().getParent());
  }
}
