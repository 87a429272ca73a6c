package org.jointwright.layout;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.jointwright.file.PlanWriter;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Plan;

/**
 * Lays invented plans by the thousand and reports what is wrong: {@code mvn -q -Psweep -Dsweep="lay
 * 1 20 L T"} lays seeds 1 to 20 of two families, {@code first} instead of {@code lay} with the
 * lesser effort; {@code "lay L-3 T-7"} lays these two, {@code "lay kept"} those that once went
 * wrong. Plans that went wrong are kept beside the report, in {@code target/sweep}.
 */
final class Sweep {
  private static final Path TARGET = Path.of("target", "sweep");

  private Sweep() {}

  public static void main(String[] args) throws IOException {
    boolean full = args.length == 0 || args[0].equals("lay");
    Files.createDirectories(TARGET);
    List<Swept> all = new ArrayList<>();
    try (PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8)) {
      for (Seeded plan :
          chosen(Arrays.asList(args).subList(Math.min(1, args.length), args.length))) {
        Swept swept = lay(plan, full);
        all.add(swept);
        if (!swept.faults().isEmpty() || !swept.slanted().isEmpty()) {
          out.println(line(swept));
        }
      }
      Path report = TARGET.resolve("report.md");
      Files.writeString(report, report(all));
      out.println(report);
    }
  }

  /** The plans that are asked for: by name, by seeds and families, or those kept. */
  private static List<Seeded> chosen(List<String> asked) throws IOException {
    if (asked.equals(List.of("kept"))) {
      return Seeded.kept().keySet().stream().toList();
    }
    if (!asked.isEmpty() && asked.getFirst().contains("-")) {
      return asked.stream().map(Seeded::named).toList();
    }
    long from = asked.isEmpty() ? 1 : Long.parseLong(asked.getFirst());
    long to = asked.size() < 2 ? from + 19 : Long.parseLong(asked.get(1));
    List<String> kinds = asked.subList(Math.min(2, asked.size()), asked.size());
    List<Seeded> found = new ArrayList<>();
    for (long seed = from; seed <= to; seed++) {
      for (StraightPlans.Kind kind : StraightPlans.Kind.values()) {
        if (kinds.isEmpty() || kinds.contains(kind.name())) {
          found.add(new Seeded(kind, seed));
        }
      }
    }
    return found;
  }

  private static Swept lay(Seeded of, boolean full) throws IOException {
    Plan plan = of.plan();
    long start = System.nanoTime();
    Layout laid = full ? LayoutEngine.lay(plan) : LayoutEngine.first(plan);
    double seconds = (System.nanoTime() - start) / 1e9;
    Swept swept = Swept.of(of, plan, laid, seconds);
    if (!swept.faults().isEmpty() || !swept.slanted().isEmpty()) {
      Path file = TARGET.resolve(of.name() + ".jointwright.json");
      Files.write(file, PlanWriter.bytes(plan));
    }
    return swept;
  }

  private static String line(Swept s) {
    return String.format(
        Locale.ROOT,
        "| %s | %s | %s | %.1f | %d | %d | %.1f |",
        s.of().name(),
        String.join(", ", s.faults()),
        String.join(
            " ", s.slanted().stream().map(a -> String.format(Locale.ROOT, "%.2f", a)).toList()),
        s.figures().cost(),
        s.figures().panels(),
        s.figures().tees(),
        s.seconds());
  }

  /** The report of a sweep: families first, then each plan that went wrong, then the slowest. */
  static String report(List<Swept> all) {
    StringBuilder text = new StringBuilder("# Invented plans, laid\n\n");
    long wrong = all.stream().filter(s -> !s.faults().isEmpty()).count();
    text.append(
        String.format(
            Locale.ROOT,
            "%d plans, %d with something wrong, %d square ones with a slanted joint.%n%n",
            all.size(),
            wrong,
            all.stream().filter(s -> !s.slanted().isEmpty()).count()));
    text.append("| family | plans | wrong | slanted | panels | tees | seconds, mean | most |\n");
    text.append("|---|---:|---:|---:|---:|---:|---:|---:|\n");
    TreeMap<StraightPlans.Kind, List<Swept>> families = new TreeMap<>();
    all.forEach(s -> families.computeIfAbsent(s.of().kind(), k -> new ArrayList<>()).add(s));
    families.forEach((kind, of) -> text.append(family(kind, of)));
    text.append("\n| plan | wrong | degrees off | cost | panels | tees | seconds |\n");
    text.append("|---|---|---|---:|---:|---:|---:|\n");
    all.stream()
        .filter(s -> !s.faults().isEmpty() || !s.slanted().isEmpty())
        .sorted(Comparator.comparing(Swept::of))
        .forEach(s -> text.append(line(s)).append('\n'));
    text.append("\nSlowest:\n");
    all.stream()
        .sorted(Comparator.comparingDouble(Swept::seconds).reversed())
        .limit(10)
        .forEach(
            s ->
                text.append(String.format(Locale.ROOT, "%s %.1f s%n", s.of().name(), s.seconds())));
    return text.toString();
  }

  private static String family(StraightPlans.Kind kind, List<Swept> of) {
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %d | %d | %d | %.2f | %.2f |%n",
        kind,
        of.size(),
        of.stream().filter(s -> !s.faults().isEmpty()).count(),
        of.stream().filter(s -> !s.slanted().isEmpty()).count(),
        of.stream().mapToInt(s -> s.figures().panels()).sum(),
        of.stream().mapToInt(s -> s.figures().tees()).sum(),
        of.stream().mapToDouble(Swept::seconds).average().orElse(0),
        of.stream().mapToDouble(Swept::seconds).max().orElse(0));
  }
}
