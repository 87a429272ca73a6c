package org.jointwright.command;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is wrong with the arguments, in the program's own words instead of the library's. */
final class Misuse {
  /** Of files that hold a plan. */
  private static final List<String> ENDINGS = List.of(".json", ".svg", ".pdf");

  private Misuse() {}

  static String say(ParameterException fault) {
    return switch (fault) {
      case MissingParameterException missing -> missing(missing);
      case UnmatchedArgumentException unmatched -> unmatched(unmatched);
      case OverwrittenOptionException twice ->
          Said.WORDS.say("command.misuse.twice", name(twice.getOverwritten()));
      default -> other(fault);
    };
  }

  private static String missing(MissingParameterException fault) {
    List<ArgSpec> missing = fault.getMissing();
    if (missing.size() == 1 && missing.getFirst() instanceof OptionSpec o && !o.required()) {
      // An option that may be left out is only missed when it stands last, without its value.
      return Said.WORDS.say("command.misuse.noValue", o.longestName(), o.paramLabel());
    }
    String all = missing.stream().map(Misuse::name).collect(Collectors.joining(", "));
    return Said.WORDS.say("command.misuse.missing", all);
  }

  private static String unmatched(UnmatchedArgumentException fault) {
    List<String> words = fault.getUnmatched();
    String all = String.join(" ", words);
    boolean isAboutTheProgram = fault.getCommandLine().getParent() == null;
    if (isAboutTheProgram && words.size() == 1 && isPlan(all)) {
      return Said.WORDS.say("command.misuse.planAlone", all);
    }
    if (fault.isUnknownOption()) {
      return Said.WORDS.say("command.misuse.option", all);
    }
    return isAboutTheProgram
        ? Said.WORDS.say("command.misuse.command", all)
        : Said.WORDS.say("command.misuse.tooMany", all);
  }

  private static boolean isPlan(String word) {
    String low = word.toLowerCase(Locale.ROOT);
    return !word.startsWith("-") && ENDINGS.stream().anyMatch(low::endsWith);
  }

  private static String other(ParameterException fault) {
    ArgSpec arg = fault.getArgSpec();
    return arg == null
        ? Said.WORDS.say("command.misuse.unclear")
        : Said.WORDS.say("command.misuse.value", name(arg));
  }

  /** An option by its longest name, a parameter by its label, an option's value with it. */
  private static String name(ArgSpec arg) {
    if (arg instanceof OptionSpec option) {
      boolean takesValue = option.arity().max() > 0;
      return takesValue ? option.longestName() + " " + option.paramLabel() : option.longestName();
    }
    return arg.paramLabel();
  }
}
