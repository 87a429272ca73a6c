package org.jointwright.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jointwright.app.Answer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code glimpse}: opens the window and closes it by itself, to measure how soon it is there; with
 * a plan it does all else that the program is for as well, to teach a cache of classes what that
 * takes.
 */
@Command(name = "glimpse", hidden = true)
final class GlimpseCommand implements Callable<Integer> {
  private final Console console;
  private final Window window;

  @Parameters(paramLabel = "PLAN", arity = "0..1", descriptionKey = "command.glimpse.plan")
  private @Nullable String plan;

  @Option(names = "-o", paramLabel = "DIR", descriptionKey = "command.glimpse.folder")
  private @Nullable String folder;

  GlimpseCommand(Console console, Window window) {
    this.console = console;
    this.window = window;
  }

  @Override
  public Integer call() {
    Optional<Path> file = Optional.empty();
    if (plan != null) {
      PlanInput input = new PlanInput(console, plan);
      Answer answer = Answer.laid(input.read());
      file = input.file();
      if (folder != null) {
        new SheetPrinting(console, folder).print(input, answer);
      }
    }
    if (window.glimpse(file, this::sayShown)) {
      return Outcome.DONE;
    }
    throw new Stop(Outcome.NOT_WRITTEN, Said.WORDS.say("command.noDisplay"));
  }

  private void sayShown() {
    try {
      console.put(Said.WORDS.say("command.glimpse.shown") + "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
