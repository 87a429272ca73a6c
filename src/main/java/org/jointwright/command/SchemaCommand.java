package org.jointwright.command;

import java.util.concurrent.Callable;
import org.jointwright.app.PlanSchema;
import picocli.CommandLine.Command;

/** {@code schema}: prints the JSON Schema of plan files. */
@Command(name = "schema")
final class SchemaCommand implements Callable<Integer> {
  private final Console console;

  SchemaCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Output.of(console, null).write(PlanSchema.text());
    return Outcome.DONE;
  }
}
