package org.jointwright.command;

import java.util.concurrent.Callable;
import org.jointwright.app.Answer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code check}: judges the joints that are in a plan. */
@Command(name = "check")
final class CheckCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "PLAN", descriptionKey = "command.check.plan")
  private String plan = "-";

  @Option(names = "--json", descriptionKey = "command.check.json")
  private boolean json;

  CheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Answer answer = Answer.asItStands(new PlanInput(console, plan).read());
    if (json) {
      Output.of(console, null).write(answer.json());
    }
    return Outcome.DONE;
  }
}
