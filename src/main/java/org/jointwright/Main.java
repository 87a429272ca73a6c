package org.jointwright;

import org.jointwright.command.CommandLineProgram;

/** Where the program starts. */
public final class Main {
  private Main() {}

  /** Runs the command named by the arguments. */
  public static void main(String[] args) {
    System.exit(CommandLineProgram.run(args));
  }
}
