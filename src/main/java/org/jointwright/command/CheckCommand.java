package org.jointwright.command;

import java.util.List;
import java.util.concurrent.Callable;
import org.jointwright.app.Answer;
import org.jointwright.app.Remedies;
import org.jointwright.check.Severity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code check}: judges the joints that are in a plan. */
@Command(name = "check")
final class CheckCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "PLAN", descriptionKey = "command.check.plan")
  private String plan = "-";

  @Option(names = "--json", descriptionKey = "command.check.json")
  private boolean json;

  @Option(names = "--why", descriptionKey = "command.check.why")
  private boolean why;

  @Option(names = "--joint", paramLabel = "JOINT", descriptionKey = "command.check.joint")
  private List<String> joints = List.of();

  CheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Answer answer = Answer.asItStands(new PlanInput(console, plan).read());
    Remedies remedies = new Remedies(answer.asked(), answer.layout(), answer.judgement());
    FindingLines lines = new FindingLines(answer);
    Output.of(console, null)
        .write(json ? answer.json(remedies::of) : report(answer, lines, remedies));
    FaultReport.ofCrashedRules(console, answer.judgement());
    if (!answer.judgement().isComplete()) {
      return Outcome.FAULT;
    }
    return answer.judgement().of(Severity.MUST).isEmpty() ? Outcome.DONE : Outcome.BROKEN;
  }

  private String report(Answer answer, FindingLines lines, Remedies remedies) {
    String report = lines.report(remedies::of);
    return why || !joints.isEmpty() ? report + new ReasonLines(answer).of(joints) : report;
  }
}
