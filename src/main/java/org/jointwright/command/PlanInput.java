package org.jointwright.command;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jointwright.app.PlanFiles;
import org.jointwright.file.PlanReading;
import org.jointwright.file.Remark;
import org.jointwright.plan.Plan;
import org.jointwright.text.Words;

/** The plan that a command is about: a file, or standard input for {@code -}. */
final class PlanInput {
  /** What is said of a plan in a sheet that was printed of another. */
  private static final String CHANGED = "file.sheet.changed";

  private final Console console;
  private final String name;
  private boolean isSheet;

  PlanInput(Console console, String name) {
    this.console = console;
    this.name = name;
  }

  /** The file; empty for standard input. */
  Optional<Path> file() {
    if (name.equals("-")) {
      return Optional.empty();
    }
    try {
      return Optional.of(Path.of(name));
    } catch (InvalidPathException e) {
      throw new Stop(Outcome.REFUSED, words().say("command.noFileName", name));
    }
  }

  /** What messages call it. */
  String shownName() {
    return name.equals("-") ? words().say("command.standardInput") : name;
  }

  /** The plan; a refused one ends the command, every problem said, and so does an empty one. */
  Plan read() {
    Plan plan = readAny();
    if (plan.slabs().isEmpty()) {
      throw new Stop(Outcome.REFUSED, words().say("command.emptyPlan", shownName()));
    }
    return plan;
  }

  /** The plan, even if there is nothing in it yet. */
  Plan readAny() {
    return switch (reading()) {
      case PlanReading.ReadPlan(Plan plan, List<Remark> repairs, boolean inSheet) -> {
        isSheet = inSheet;
        for (Remark r : repairs) {
          // Nothing is mended where a plan is only said to be another than the one printed.
          boolean isToldOnly = r.key().equals(CHANGED);
          console.say(line(isToldOnly ? "command.problem" : "command.mended", r));
        }
        yield plan;
      }
      case PlanReading.Refused(List<Remark> problems) -> {
        problems.forEach(p -> console.say(line("command.problem", p)));
        throw new Stop(Outcome.REFUSED, words().say("command.refused", shownName()));
      }
    };
  }

  /** Whether the plan that was read stood inside a printed sheet. */
  boolean isSheet() {
    return isSheet;
  }

  private PlanReading reading() {
    Optional<Path> file = file();
    if (file.isPresent()) {
      return PlanFiles.open(file.get());
    }
    try {
      return PlanFiles.open(console.in());
    } catch (IOException e) {
      throw new Stop(Outcome.REFUSED, words().say("command.inputBroke"));
    }
  }

  private String line(String key, Remark remark) {
    return words().say(key, shownName(), remark.say(words()));
  }

  private static Words words() {
    return Said.WORDS;
  }
}
