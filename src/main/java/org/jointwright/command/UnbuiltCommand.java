package org.jointwright.command;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** A command that is meant to come: says so, whatever its arguments, and stands in no help. */
@Command(hidden = true)
final class UnbuiltCommand implements Callable<Integer> {
  private static final List<String> NAMES = List.of("heights", "price", "pour", "export");

  private final String name;

  UnbuiltCommand(String name) {
    this.name = name;
  }

  /** Takes any arguments: to complain of one would say that another is understood. */
  static void addAll(CommandLine program) {
    for (String name : NAMES) {
      CommandLine command = new CommandLine(new UnbuiltCommand(name));
      command.setUnmatchedArgumentsAllowed(true);
      program.addSubcommand(name, command);
    }
  }

  @Override
  public Integer call() {
    throw new Stop(Outcome.USAGE, Said.WORDS.say("command.notBuilt", name));
  }
}
