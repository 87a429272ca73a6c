package org.jointwright.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jointwright.app.SheetProof;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code prove}: rebuilds a printed cut sheet from its words and says whether it can be right. */
@Command(name = "prove")
final class ProveCommand implements Callable<Integer> {
  private static final String SVG = ".svg";
  private static final String PNG = ".png";

  private final Console console;

  @Parameters(paramLabel = "SHEET.pdf", descriptionKey = "command.prove.sheet")
  private String sheet = "-";

  @Option(names = "-o", paramLabel = "PICTURE", descriptionKey = "command.prove.output")
  private @Nullable String picture;

  @Option(names = "--json", descriptionKey = "command.prove.json")
  private boolean json;

  ProveCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (picture != null && !ends(picture, SVG) && !ends(picture, PNG)) {
      throw new Stop(Outcome.USAGE, Said.WORDS.say("command.prove.ending", picture));
    }
    SheetProof proof = proof();
    if (picture != null) {
      Output.of(console, picture).write(proof.picture(ends(picture, SVG)));
    }
    Output.of(console, null).write(json ? proof.json() : String.join("\n", proof.lines()) + "\n");
    return proof.isProven() ? Outcome.DONE : Outcome.BROKEN;
  }

  private static boolean ends(String name, String ending) {
    return name.toLowerCase(Locale.ROOT).endsWith(ending);
  }

  private String name() {
    return sheet.equals("-") ? Said.WORDS.say("command.standardInput") : sheet;
  }

  private SheetProof proof() {
    byte[] bytes;
    try {
      bytes = bytes();
    } catch (IOException | InvalidPathException e) {
      throw new Stop(Outcome.REFUSED, Said.WORDS.say("command.prove.missing", name()));
    }
    try {
      Optional<SheetProof> proof = SheetProof.of(bytes);
      if (proof.isPresent()) {
        return proof.get();
      }
      List<String> others = SheetProof.others(bytes);
      throw new Stop(
          Outcome.REFUSED,
          others.isEmpty()
              ? Said.WORDS.say("command.prove.noSheet", name())
              : Said.WORDS.say("command.prove.otherSheet", name(), String.join(", ", others)));
    } catch (IOException e) {
      throw new Stop(Outcome.REFUSED, Said.WORDS.say("command.prove.noPdf", name()));
    }
  }

  private byte[] bytes() throws IOException {
    if (sheet.equals("-")) {
      return console.in().readAllBytes();
    }
    try (InputStream in = Files.newInputStream(Path.of(sheet))) {
      return in.readAllBytes();
    }
  }
}
