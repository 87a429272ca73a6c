package org.jointwright.command;

import java.util.Optional;
import java.util.concurrent.Callable;

/** The whole command line: from the arguments to the exit code. */
public final class CommandLineProgram {
  private final Console console;
  private final Window window;

  CommandLineProgram(Console console, Window window) {
    this.console = console;
    this.window = window;
  }

  /** Runs what the arguments say, on the process’s own input and output. */
  public static int run(Window window, String... arguments) {
    return new CommandLineProgram(Console.ofProcess(), window).execute(arguments);
  }

  int execute(String... arguments) {
    try {
      Optional<Callable<Integer>> straight = StraightToWindow.asked(console, window, arguments);
      return straight.isPresent()
          ? straight.get().call()
          : new Commands(console, window).execute(arguments);
    } catch (Exception | StackOverflowError | OutOfMemoryError e) {
      return Ended.by(e, console, arguments);
    }
  }
}
