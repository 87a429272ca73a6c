package org.jointwright.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import org.jointwright.app.Program;
import org.jointwright.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** All commands with their options: reads the arguments, runs the command, gives the exit code. */
final class Commands {
  private final Console console;
  private final Window window;
  private final CommandLine line;

  Commands(Console console, Window window) {
    this.console = console;
    this.window = window;
    this.line = line();
  }

  private CommandLine line() {
    CommandLine all = new CommandLine(new JointwrightCommand(console, window));
    all.addSubcommand(new DesignCommand(console, window));
    all.addSubcommand(new JointCommand(console));
    all.addSubcommand(new CheckCommand(console));
    all.addSubcommand(new SheetCommand(console));
    all.addSubcommand(new OrderCommand(console));
    all.addSubcommand(new ProveCommand(console));
    all.addSubcommand(new SchemaCommand(console));
    all.addSubcommand(new WelcomeCommand(console, window));
    all.addSubcommand(new GlimpseCommand(console, window));
    describe(all);
    all.getSubcommands().values().forEach(Commands::describe);
    UnbuiltCommand.addAll(all);
    all.setOut(new PrintWriter(console.out(), true, StandardCharsets.UTF_8));
    all.setErr(new PrintWriter(console.error(), true, StandardCharsets.UTF_8));
    all.setExecutionStrategy(new CommandLine.RunLast());
    all.setParameterExceptionHandler(this::misused);
    all.setExecutionExceptionHandler(this::stopped);
    return all;
  }

  private static void describe(CommandLine command) {
    CommandSpec spec = command.getCommandSpec();
    Words words = Said.WORDS;
    spec.resourceBundle(
        new Said(spec.args().stream().map(ArgSpec::descriptionKey).collect(Collectors.toSet())));
    spec.usageMessage().description(words.say("command.about." + spec.name()).replace("%", "%%"));
    spec.addOption(
        OptionSpec.builder("-h", "--help")
            .usageHelp(true)
            .description(words.say("command.help"))
            .build());
    spec.addOption(
        OptionSpec.builder("-V", "--version")
            .versionHelp(true)
            .description(words.say("command.version"))
            .build());
    spec.version(spec.root().name() + " " + Program.VERSION);
    spec.usageMessage()
        .sortOptions(false)
        .synopsisHeading(words.say("command.heading.usage") + " ")
        .synopsisSubcommandLabel("[" + words.say("command.heading.command") + "]")
        .commandListHeading(words.say("command.heading.commands") + "%n");
  }

  int execute(String... arguments) {
    return line.execute(arguments);
  }

  private int misused(ParameterException e, String[] arguments) {
    console.say(Misuse.say(e));
    console.say(
        Said.WORDS.say("command.seeHelp", e.getCommandLine().getCommandSpec().qualifiedName()));
    return Outcome.USAGE;
  }

  private int stopped(Exception e, CommandLine command, ParseResult parsed) {
    return Ended.by(e, console, parsed.originalArgs().toArray(String[]::new));
  }
}
