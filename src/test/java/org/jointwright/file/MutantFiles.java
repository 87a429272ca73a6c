package org.jointwright.file;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jointwright.measure.UnitSystem;
import org.jointwright.text.Words;

/**
 * Writes bad plans that {@link PlanMutator} makes of the samples into a folder, and what is said of
 * each as the lines of {@code expected.txt}: told a folder and how many of each harm, it keeps
 * those of which something new is said. Read each before you believe it.
 */
final class MutantFiles {
  private static final List<String> GOOD =
      List.of(
          "samples/shed-pad-with-a-drain.jointwright.json",
          "samples/drive-approach-walk.jointwright.json",
          "samples/two-panels-in-an-old-drive.jointwright.json",
          "src/test/resources/cases/odd/everything.jointwright.json");

  private MutantFiles() {}

  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    Files.createDirectories(folder);
    try (PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8)) {
      for (PlanMutator.Harm harm : PlanMutator.Harm.values()) {
        for (String line : write(folder, harm, Integer.parseInt(args[1]))) {
          out.println(line);
        }
      }
    }
  }

  private static List<String> write(Path folder, PlanMutator.Harm harm, int wanted)
      throws IOException {
    List<String> lines = new ArrayList<>();
    Set<String> said = new HashSet<>();
    for (long seed = 1; seed <= 200 && lines.size() < wanted; seed++) {
      String good = Files.readString(Path.of(GOOD.get((int) (seed % GOOD.size()))));
      String bad = new PlanMutator(seed).harm(harm, good);
      if (PlanReader.read(bad) instanceof PlanReading.Refused refused) {
        Remark first = refused.problems().getFirst();
        if (said.add(first.place() + first.key())) {
          String name = harm.name().toLowerCase(Locale.ROOT).replace('_', '-') + "-" + seed;
          Files.writeString(folder.resolve(name + ".json"), bad);
          String words = first.say(Words.english(UnitSystem.FEET_INCHES));
          int last = Math.max(words.lastIndexOf(". "), words.indexOf("): ") + 1);
          String remedy = words.substring(last + 2);
          String place = first.place().isEmpty() ? "line " + first.line() : first.place();
          lines.add(name + " | " + place + " | " + remedy);
        }
      }
    }
    return lines;
  }
}
