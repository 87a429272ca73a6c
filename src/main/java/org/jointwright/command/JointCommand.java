package org.jointwright.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jointwright.app.Answer;
import org.jointwright.app.PlanFiles;
import org.jointwright.plan.Plan;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code joint}: lays the joints of a plan. */
@Command(name = "joint")
final class JointCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "PLAN", descriptionKey = "command.joint.plan")
  private String plan = "-";

  @Option(names = "-o", paramLabel = "FILE", descriptionKey = "command.joint.output")
  private @Nullable String output;

  @Option(names = "--json", descriptionKey = "command.joint.json")
  private boolean json;

  @Option(names = "--in-place", descriptionKey = "command.joint.inPlace")
  private boolean inPlace;

  @Option(names = "--how-near", descriptionKey = "command.joint.howNear")
  private boolean howNear;

  @Option(names = "--choices", descriptionKey = "command.joint.choices")
  private boolean choices;

  @Option(names = "--choice", paramLabel = "CHOICE", descriptionKey = "command.joint.choice")
  private @Nullable String choice;

  JointCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (choices && (choice != null || json || inPlace || howNear)) {
      // A list written over the plan would be the end of the plan.
      throw new Stop(Outcome.USAGE, Said.WORDS.say("command.choiceClash"));
    }
    PlanInput input = new PlanInput(console, plan);
    Output to = output(input);
    Plan read = chosen(input.read());
    if (input.isSheet() && input.file().filter(to::isOnto).isPresent()) {
      String key = inPlace ? "command.inPlaceSheet" : "command.ontoSheet";
      throw new Stop(Outcome.USAGE, Said.WORDS.say(key, plan));
    }
    if (!inPlace && input.file().filter(to::isOnto).isPresent()) {
      throw new Stop(Outcome.USAGE, Said.WORDS.say("command.ontoItself", plan));
    }
    if (choices) {
      to.write(new ChoiceLines(read).report());
      return Outcome.DONE;
    }
    Answer answer = Answer.laid(read);
    // Who asks only how near a layout is wants no plan on the screen.
    boolean onlyAsked = howNear && output == null && !json && !inPlace;
    if (!onlyAsked) {
      to.write(json ? answer.json() : PlanFiles.text(answer.plan()));
    }
    // A rule that cannot be met is no failure of the command, but never goes unsaid.
    FindingLines lines = new FindingLines(answer);
    lines.broken().forEach(console::say);
    lines.helpless().forEach(console::say);
    if (howNear) {
      List<String> near = new NearLines(answer).lines();
      if (onlyAsked) {
        to.write(String.join("\n", near) + "\n");
      } else {
        near.forEach(console::say);
      }
    }
    FaultReport.ofCrashedRules(console, answer.judgement());
    return answer.judgement().isComplete() ? Outcome.DONE : Outcome.FAULT;
  }

  /** The plan with the choice that is asked for. */
  private Plan chosen(Plan read) {
    if (choice == null) {
      return read;
    }
    return ChoiceWord.chosen(read, choice);
  }

  private Output output(PlanInput input) {
    Optional<Path> file = input.file();
    Output to = Output.of(console, output);
    if (inPlace) {
      if (json || file.isEmpty() || (output != null && !to.isOnto(file.get()))) {
        throw new Stop(Outcome.USAGE, Said.WORDS.say("command.inPlaceClash"));
      }
      return Output.onto(console, file.get());
    }
    return to;
  }
}
