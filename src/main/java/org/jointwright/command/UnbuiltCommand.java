package org.jointwright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Unmatched;

/** A command that is meant to come: says so, whatever its arguments, and stands in no help. */
@Command(hidden = true)
final class UnbuiltCommand implements Callable<Integer> {
  static final List<String> NAMES = List.of("heights", "order", "price", "pour", "prove", "export");

  private final String name;

  /** Taken so that none of them is complained of; what they say does not matter yet. */
  @Unmatched private List<String> arguments = new ArrayList<>();

  UnbuiltCommand(String name) {
    this.name = name;
  }

  @Override
  public Integer call() {
    throw new Stop(Outcome.USAGE, Said.WORDS.say("command.notBuilt", name));
  }
}
