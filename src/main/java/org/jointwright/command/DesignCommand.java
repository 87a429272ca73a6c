package org.jointwright.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code design}: opens the window. */
@Command(name = "design")
final class DesignCommand implements Callable<Integer> {
  private final Console console;
  private final Window window;

  @Parameters(paramLabel = "PLAN", arity = "0..1", descriptionKey = "command.design.plan")
  private @Nullable String plan;

  DesignCommand(Console console, Window window) {
    this.console = console;
    this.window = window;
  }

  DesignCommand(Console console, Window window, String plan) {
    this(console, window);
    this.plan = plan;
  }

  @Override
  public Integer call() {
    Optional<Path> file = Optional.empty();
    if (plan != null) {
      PlanInput input = new PlanInput(console, plan);
      file = input.file();
      if (file.isEmpty()) {
        throw new Stop(Outcome.USAGE, Said.WORDS.say("command.design.fromStandardInput"));
      }
      // A plan that cannot be read is better said here than in an empty window.
      input.readAny();
    }
    if (window.open(file)) {
      return Outcome.DONE;
    }
    throw new Stop(Outcome.NOT_WRITTEN, Said.WORDS.say("command.noDisplay"));
  }
}
