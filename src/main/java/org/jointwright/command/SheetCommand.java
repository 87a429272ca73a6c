package org.jointwright.command;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jointwright.app.Answer;
import org.jointwright.app.SheetKind;
import org.jointwright.app.Sheets;
import org.jointwright.text.Words;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code sheet}: writes the sheets of a plan that has its joints. */
@Command(name = "sheet")
final class SheetCommand implements Callable<Integer> {
  private static final List<String> FORMS =
      List.of("owner", "crew", "forms", "plant", "pour", "all");

  private final Console console;

  @Parameters(paramLabel = "PLAN", descriptionKey = "command.sheet.plan")
  private String plan = "-";

  @Option(
      names = "-o",
      paramLabel = "DIR",
      required = true,
      descriptionKey = "command.sheet.folder")
  private String folder = "";

  @Option(names = "--for", paramLabel = "WHOM", descriptionKey = "command.sheet.form")
  private String form = "crew";

  @Option(names = "--paper", paramLabel = "P", descriptionKey = "command.sheet.paper")
  private String paper = "letter";

  @Option(names = "--lang", paramLabel = "LANG", descriptionKey = "command.sheet.language")
  private String language = "en";

  @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "command.sheet.units")
  private @Nullable String units;

  @Option(names = "--how", descriptionKey = "command.sheet.how")
  private boolean how;

  SheetCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Chosen.among("--for", form, FORMS);
    List<SheetKind> kinds = kinds();
    paper = paper.toLowerCase(Locale.ROOT);
    Chosen.among("--paper", paper, Sheets.papers());
    Chosen.check(language, units);
    PlanInput input = new PlanInput(console, plan);
    Answer answer = Answer.asItStands(input.read());
    if (!answer.plan().isLaid() && !answer.judgement().isClean()) {
      throw new Stop(Outcome.REFUSED, Said.WORDS.say("command.sheet.unlaid", input.shownName()));
    }
    Words words = Chosen.words(language, units, answer.plan());
    return new SheetPrinting(console, folder)
        .print(input, answer, new Sheets.Wanted(kinds, words, paper, how));
  }

  /** The sheets that are wished for; a word for one that is not built yet ends the command. */
  private List<SheetKind> kinds() {
    if (form.equals("all")) {
      return List.of(SheetKind.values());
    }
    return List.of(
        SheetKind.of(form)
            .orElseThrow(
                () -> {
                  String there = String.join(", ", SheetKind.all()) + ", all";
                  return new Stop(
                      Outcome.USAGE,
                      Said.WORDS.say("command.sheet.notBuilt", "--for", form, there));
                }));
  }
}
