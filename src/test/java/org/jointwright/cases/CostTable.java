package org.jointwright.cases;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Makes the page of costs anew: {@code mvn -q -Pcost}. Told parts of names, it prints the rows of
 * the cases and families that hold one of them, and leaves the page alone.
 */
final class CostTable {
  static final Path PAGE = Path.of("src/docs/COST.md");
  private static final Path REMARKS = Path.of("src/test/resources/cases/remarks.properties");
  private static final String HEAD =
      """
      # What the layouts cost

      Every open case of the tests, laid by the engine and measured by the judge's evidence, beside the best layout known for
      it (`src/test/resources/cases/laid`). Made by `mvn -q -Pcost`, which takes about a minute; a test lays some of them and
      compares. Remarks stand in `src/test/resources/cases/remarks.properties`.

      Cost: feet of contraction joint, 8 more for each tee (4 for a Y), 2 for each end that misses its neighbour's, and a quarter of the length times how
      uneven the panels are beyond a tenth. Figures in brackets are those of the best layout known.

      """;

  private CostTable() {}

  public static void main(String[] parts) throws IOException {
    List<OpenCase> chosen =
        OpenCase.all().stream()
            .filter(c -> parts.length == 0 || c.isNamedBy(List.of(parts)))
            .toList();
    try (PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8)) {
      if (parts.length == 0) {
        Files.writeString(PAGE, page(chosen.stream().map(CostRow::lay).toList()));
        out.println(PAGE);
        return;
      }
      List<CostRow> rows = new ArrayList<>();
      for (OpenCase open : chosen) {
        long start = System.nanoTime();
        rows.add(CostRow.lay(open));
        double seconds = (System.nanoTime() - start) / 1e9;
        out.printf(Locale.ROOT, "%s %.1f s%n", row(rows.getLast()), seconds);
      }
      out.println(means(rows));
    }
  }

  /** The page of these rows. */
  static String page(List<CostRow> rows) {
    StringBuilder page = new StringBuilder(HEAD);
    page.append(means(rows)).append("\n\n## By family\n\n| family | cases | mean | worst |\n");
    page.append("|---|---:|---:|---|\n");
    Map<String, List<CostRow>> families = new LinkedHashMap<>();
    rows.forEach(r -> families.computeIfAbsent(r.of().family(), k -> new ArrayList<>()).add(r));
    families.forEach((family, of) -> page.append(family(family, of)));
    page.append("\n## By case\n\n");
    page.append(
        "| family | case | cost | best known | ratio | feet | tees | panels | broken | remark |\n");
    page.append("|---|---|---:|---:|---:|---:|---:|---:|---|---|\n");
    rows.forEach(r -> page.append(row(r)).append('\n'));
    return page.toString();
  }

  /** A row of the table of cases. */
  static String row(CostRow r) {
    return String.format(
        Locale.ROOT,
        "| %s | %s | %.1f | %.1f | %s | %.1f (%.1f) | %s (%s) | %d (%d) | %s | %s |",
        r.of().family(),
        r.of().name(),
        r.ours().cost(),
        r.best().cost(),
        r.comparable() ? String.format(Locale.ROOT, "%.3f", r.ratio()) : "-",
        r.ours().feet(),
        r.best().feet(),
        count(r.ours().tees()),
        count(r.best().tees()),
        r.ours().panels(),
        r.best().panels(),
        broken(r),
        remarks().getOrDefault(r.of().name(), ""));
  }

  private static String broken(CostRow r) {
    String ours = String.join(" ", r.ours().broken());
    return r.best().broken().isEmpty()
        ? ours
        : ours + " (" + String.join(" ", r.best().broken()) + ")";
  }

  /** What is said of cases that cost more or less than the best known, by the case's name. */
  static Map<String, String> remarks() {
    return OpenCase.words(REMARKS);
  }

  private static String family(String family, List<CostRow> rows) {
    List<CostRow> fair = rows.stream().filter(CostRow::comparable).toList();
    if (fair.isEmpty()) {
      return String.format(Locale.ROOT, "| %s | %d | - | |\n", family, rows.size());
    }
    CostRow worst = worst(fair);
    return String.format(
        Locale.ROOT,
        "| %s | %d | %.3f | %.3f %s |\n",
        family,
        rows.size(),
        mean(fair),
        worst.ratio(),
        worst.of().name());
  }

  private static String means(List<CostRow> rows) {
    List<CostRow> fair = rows.stream().filter(CostRow::comparable).toList();
    if (fair.isEmpty()) {
      return rows.size() + " cases, none without a broken rule.";
    }
    CostRow worst = worst(fair);
    return String.format(
        Locale.ROOT,
        "%d cases, %d with every rule kept: mean ratio %.4f, worst %.3f (%s).",
        rows.size(),
        fair.size(),
        mean(fair),
        worst.ratio(),
        worst.of().name());
  }

  private static double mean(List<CostRow> rows) {
    return rows.stream().mapToDouble(CostRow::ratio).average().orElseThrow();
  }

  private static CostRow worst(List<CostRow> rows) {
    return rows.stream().max(Comparator.comparingDouble(CostRow::ratio)).orElseThrow();
  }

  private static String count(double tees) {
    return tees == Math.rint(tees)
        ? Long.toString(Math.round(tees))
        : String.format(Locale.ROOT, "%.1f", tees);
  }
}
