package org.jointwright.command;

import java.util.Optional;
import java.util.concurrent.Callable;

/**
 * Whether the arguments ask for the window and nothing else. It is opened then without setting up
 * all commands and their options first: that takes a quarter of a second, which someone waits.
 */
final class StraightToWindow {
  private StraightToWindow() {}

  /** The command that opens the window; empty where there is anything more to read. */
  static Optional<Callable<Integer>> asked(Console console, Window window, String... arguments) {
    if (arguments.length == 0) {
      return Optional.of(new DesignCommand(console, window));
    }
    if (arguments.length == 1 && arguments[0].equals("design")) {
      return Optional.of(new DesignCommand(console, window));
    }
    if (arguments.length == 2 && arguments[0].equals("design") && isPlain(arguments[1])) {
      return Optional.of(new DesignCommand(console, window, arguments[1]));
    }
    // Measures how soon the window is there, so it must come the same way.
    if (arguments.length == 1 && arguments[0].equals("glimpse")) {
      return Optional.of(new GlimpseCommand(console, window));
    }
    return Optional.empty();
  }

  /** Whether it can only be a file: no option, no list of arguments. */
  private static boolean isPlain(String argument) {
    return !argument.isBlank() && !argument.startsWith("-") && !argument.startsWith("@");
  }
}
