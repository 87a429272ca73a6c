package org.jointwright.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.jointwright.app.Answer;
import org.jointwright.app.SheetKind;
import org.jointwright.app.Sheets;
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
        input,
        answer,
        Sheets.Wanted.of(SheetKind.CREW, Words.english(UnitSystem.of(answer.plan().unit()))));
  }

  /**
   * Prints the sheets; whatever ends it is said.
   *
   * @return the exit code
   */
  int print(PlanInput input, Answer answer, Sheets.Wanted wanted) {
    for (Path file : write(input, answer, wanted)) {
      Output.of(console, null).write(file + "\n");
    }
    // What is broken is on the paper too, but whoever prints it should know before the crew does.
    new FindingLines(answer).broken().forEach(console::say);
    FaultReport.ofCrashedRules(console, answer.judgement());
    return answer.judgement().isComplete() ? Outcome.DONE : Outcome.FAULT;
  }

  private List<Path> write(PlanInput input, Answer answer, Sheets.Wanted wanted) {
    try {
      Path into = Path.of(folder);
      if (Files.exists(into) && !Files.isDirectory(into)) {
        throw new Stop(Outcome.NOT_WRITTEN, Said.WORDS.say("command.sheet.notAFolder", folder));
      }
      if (input.isSheet() && input.file().filter(f -> liesIn(f, into)).isPresent()) {
        // It may have the name of one that is printed now: what was agreed on would be gone.
        throw new Stop(
            Outcome.NOT_WRITTEN, Said.WORDS.say("command.sheet.besideItself", input.file().get()));
      }
      return Sheets.write(answer, wanted, into, Sheets.stem(input.file()), () -> true);
    } catch (InvalidPathException e) {
      throw new Stop(Outcome.USAGE, Said.WORDS.say("command.noFileName", folder));
    } catch (UnprintableException e) {
      throw new Stop(
          Outcome.REFUSED, Said.WORDS.say("command.sheet.unprintable", e.letter(), e.text()));
    } catch (IOException e) {
      throw new Stop(Outcome.NOT_WRITTEN, Said.WORDS.say("command.notWritten", folder));
    }
  }

  private static boolean liesIn(Path file, Path folder) {
    try {
      Path own = file.toAbsolutePath().getParent();
      return own != null && Files.isDirectory(folder) && Files.isSameFile(own, folder);
    } catch (IOException e) {
      // What cannot be looked at cannot be written to either; that is said when it fails.
      return false;
    }
  }
}
