package org.jointwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** The program itself, which without a command opens the window. */
@Command(name = "jointwright")
final class JointwrightCommand implements Callable<Integer> {
  private final Console console;
  private final Window window;

  JointwrightCommand(Console console, Window window) {
    this.console = console;
    this.window = window;
  }

  @Override
  public Integer call() {
    return new DesignCommand(console, window).call();
  }
}
