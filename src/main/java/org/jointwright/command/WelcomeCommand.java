package org.jointwright.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jointwright.app.Answer;
import org.jointwright.app.CutSheets;
import org.jointwright.app.UnprintableException;
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
    Output out = Output.of(console, null);
    try {
      String stem = CutSheets.stem(input.file());
      for (Path f : CutSheets.write(answer.layout(), Path.of(folder), stem, Optional.empty())) {
        out.write(f + "\n");
      }
    } catch (UnprintableException e) {
      throw new Stop(
          Outcome.REFUSED, Said.WORDS.say("command.sheet.unprintable", e.letter(), e.text()));
    } catch (IOException e) {
      throw new Stop(Outcome.NOT_WRITTEN, Said.WORDS.say("command.notWritten", folder));
    }
    if (!window.open(input.file())) {
      console.say(Said.WORDS.say("command.noDisplay"));
    }
    return Outcome.DONE;
  }
}
