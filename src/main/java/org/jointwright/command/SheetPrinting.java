package org.jointwright.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jointwright.app.Answer;
import org.jointwright.app.CutSheets;
import org.jointwright.app.OrderSheets;
import org.jointwright.app.UnprintableException;
import org.jointwright.measure.UnitSystem;
import org.jointwright.text.Words;

/** Writes the sheets of a plan into a folder and names the files on standard output. */
final class SheetPrinting {
  private final Console console;
  private final String folder;

  SheetPrinting(Console console, String folder) {
    this.console = console;
    this.folder = folder;
  }

  /** Prints the sheets in English and in the plan's own measures; returns the exit code. */
  int print(PlanInput input, Answer answer) {
    return print(
        input, answer, Words.english(UnitSystem.of(answer.plan().unit())), List.of("crew"));
  }

  /**
   * Prints the sheets; whatever ends it is said.
   *
   * @param words the language and the measures of the sheets
   * @param whom whom sheets are printed for, as the option names them
   * @return the exit code
   */
  int print(PlanInput input, Answer answer, Words words, List<String> whom) {
    for (Path file : write(input, answer, words, whom)) {
      Output.of(console, null).write(file + "\n");
    }
    // What is broken is on the paper too, but whoever prints it should know before the crew does.
    new FindingLines(answer).broken().forEach(console::say);
    FaultReport.ofCrashedRules(console, answer.judgement());
    return answer.judgement().isComplete() ? Outcome.DONE : Outcome.FAULT;
  }

  private List<Path> write(PlanInput input, Answer answer, Words words, List<String> whom) {
    try {
      Path into = Path.of(folder);
      if (Files.exists(into) && !Files.isDirectory(into)) {
        throw new Stop(Outcome.NOT_WRITTEN, Said.WORDS.say("command.sheet.notAFolder", folder));
      }
      List<Path> files = new ArrayList<>();
      if (whom.contains("crew")) {
        files.addAll(CutSheets.write(answer, into, CutSheets.stem(input.file()), words));
      }
      if (whom.contains("plant")) {
        files.addAll(OrderSheets.write(answer, into, OrderSheets.stem(input.file()), words));
      }
      return files;
    } catch (InvalidPathException e) {
      throw new Stop(Outcome.USAGE, Said.WORDS.say("command.noFileName", folder));
    } catch (UnprintableException e) {
      throw new Stop(
          Outcome.REFUSED, Said.WORDS.say("command.sheet.unprintable", e.letter(), e.text()));
    } catch (IOException e) {
      throw new Stop(Outcome.NOT_WRITTEN, Said.WORDS.say("command.notWritten", folder));
    }
  }
}
