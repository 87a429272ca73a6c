package org.jointwright.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Standard input, output and error of one run, always in UTF-8.
 *
 * @param in standard input
 * @param out standard output: only what was asked for
 * @param error standard error: what is said about it
 */
record Console(InputStream in, OutputStream out, PrintStream error) {
  /** The process's own. */
  static Console ofProcess() {
    return new Console(
        System.in, new PlainOutput(), new PrintStream(System.err, true, StandardCharsets.UTF_8));
  }

  /**
   * Puts out what was asked for; a reader that has gone away is an output that cannot be written.
   */
  void put(String text) throws IOException {
    put(text.getBytes(StandardCharsets.UTF_8));
  }

  /** The same for what is no text. */
  void put(byte[] bytes) throws IOException {
    out.write(bytes);
    out.flush();
  }

  /** Says a line about what was asked for. */
  void say(String line) {
    error.print(line + "\n");
    error.flush();
  }
}
