package org.jointwright.command;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** One run of the command line inside the test's own process. */
record Run(int code, String out, String error) {
  static Run of(String... arguments) {
    return fed("", arguments);
  }

  /** A run with something on standard input. */
  static Run fed(String input, String... arguments) {
    return with(plan -> false, input, arguments);
  }

  static Run with(Window window, String input, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream error = new ByteArrayOutputStream();
    Console console =
        new Console(
            new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
            out,
            new PrintStream(error, true, StandardCharsets.UTF_8));
    int code = new CommandLineProgram(console, window).execute(arguments);
    return new Run(
        code, out.toString(StandardCharsets.UTF_8), error.toString(StandardCharsets.UTF_8));
  }
}
