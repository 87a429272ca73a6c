package org.jointwright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jointwright.check.CrashedRule;
import org.jointwright.check.Judgement;

/** What is left behind when the program itself is at fault: a file to send along, no trace. */
final class FaultReport {
  private final Console console;
  private final List<String> arguments;

  FaultReport(Console console, String... arguments) {
    this.console = console;
    this.arguments = List.of(arguments);
  }

  /** Says which rules could not be judged, and leaves a report of each. */
  static void ofCrashedRules(Console console, Judgement judgement) {
    for (CrashedRule crashed : judgement.crashed()) {
      console.say(Said.WORDS.say("check.crashed", crashed.rule(), crashed.slab()));
      new FaultReport(console, crashed.rule(), crashed.slab()).write(crashed.fault());
    }
  }

  /** Writes the report, says where it lies, and gives the exit code. */
  int write(Throwable fault) {
    try {
      Path report = Files.createTempFile("jointwright-fault-", ".txt");
      Files.writeString(report, text(fault));
      console.say(Said.WORDS.say("command.fault", report.toString()));
    } catch (IOException e) {
      console.say(Said.WORDS.say("command.faultWithoutReport", fault.getClass().getSimpleName()));
    }
    return Outcome.FAULT;
  }

  private String text(Throwable fault) {
    StringWriter text = new StringWriter();
    PrintWriter out = new PrintWriter(text);
    out.println("jointwright " + String.join(" ", arguments));
    out.println("Java " + Runtime.version() + ", " + System.getProperty("os.name"));
    fault.printStackTrace(out);
    out.flush();
    return text.toString();
  }
}
