package org.jointwright.command;

import java.util.concurrent.Callable;
import org.jointwright.app.Answer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * What the build runs by default: a sample laid out, its sheets written, and the window on it where
 * there is a display.
 */
@Command(name = "welcome", hidden = true)
final class WelcomeCommand implements Callable<Integer> {
  private final Console console;
  private final Window window;

  @Parameters(
      paramLabel = "PLAN",
      arity = "0..1",
      descriptionKey = "command.welcome.plan",
      defaultValue = "samples/drive-approach-walk.jointwright.json")
  private String plan = "";

  @Option(
      names = "-o",
      paramLabel = "DIR",
      descriptionKey = "command.welcome.folder",
      defaultValue = "out")
  private String folder = "";

  WelcomeCommand(Console console, Window window) {
    this.console = console;
    this.window = window;
  }

  @Override
  public Integer call() {
    PlanInput input = new PlanInput(console, plan);
    Answer answer = Answer.laid(input.read());
    int code = new SheetPrinting(console, folder).print(input, answer);
    if (!window.open(input.file())) {
      console.say(Said.WORDS.say("command.noDisplay"));
    }
    return code;
  }
}
