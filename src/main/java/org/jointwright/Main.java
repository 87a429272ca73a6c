package org.jointwright;

import org.jointwright.command.CommandLineProgram;

/** Where the program starts. */
public final class Main {
  private Main() {}

  /** Runs the command named by the arguments. */
  public static void main(String[] args) {
    // Libraries may log nowhere without saying so: standard error is for our own messages.
    System.setProperty("slf4j.internal.verbosity", "ERROR");
    System.exit(CommandLineProgram.run(plan -> false, args));
  }
}
