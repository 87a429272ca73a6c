package org.jointwright.proof;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.jointwright.sheet.LaidPlans;
import org.jointwright.sheet.LaidPlans.Kind;
import org.jointwright.sheet.MadeSheet;
import org.jointwright.sheet.Room;
import org.jointwright.sheet.TwoRenderers;
import org.jointwright.sheet.page.Page;

/**
 * Makes every kind of sheet of every plan, looks whether texts have room, whether cut sheets can be
 * proved and whether two renderers show the same, and makes the page of what came out.
 */
public final class SheetsPage {
  private static final long SEED = 20_261_127;
  private static final int OTHERS = 2;
  private static final Path PAGE = Path.of("src", "docs", "SHEETS.md");

  private static final String HEAD =
      """
      # What the sheets were put to

      Made by `mvn -q -Psheets`: every kind of sheet of each sample, each laid case and each crowded plan, in English feet on letter paper and in
      Spanish metres on A4, and two of the other languages, measures and papers that a seed has chosen. On each page no text may touch another, be
      struck through, leave the margins or be lower than 3 mm; each cut sheet is proved from its words, and what is rebuilt must lie where it lies in
      the plan. The pages of the first two are shown by Chromium (their SVG) and painted by PDFBox (their PDF): at 150 dots an inch no dark dot of
      either may be farther than two dots from ink of the other.

      """;

  private final Map<Kind, Count> counts = new EnumMap<>(Kind.class);
  private final List<String> faults = new ArrayList<>();

  private SheetsPage() {}

  private record Count(int sheets, int pages, int compared, int proved) {
    private static final Count NONE = new Count(0, 0, 0, 0);

    Count with(Count c) {
      return new Count(
          sheets + c.sheets, pages + c.pages, compared + c.compared, proved + c.proved);
    }
  }

  /**
   * Writes the page; with words, looks only at plans whose name holds one and prints what is wrong:
   * {@code all} means every language, measure and paper, {@code rooms} leaves the renderers out.
   */
  public static void main(String... words) throws IOException, InterruptedException {
    List<String> asked = new ArrayList<>(List.of(words));
    boolean all = asked.remove("all");
    boolean rooms = asked.remove("rooms");
    SheetsPage page = new SheetsPage();
    Path folder = Files.createTempDirectory("sheets");
    TwoRenderers both = new TwoRenderers(folder);
    Optional<String> missing = rooms ? Optional.of("") : both.missing();
    missing.filter(m -> !m.isEmpty()).ifPresent(System.err::println);
    for (String name : LaidPlans.names()) {
      if (!asked.isEmpty() && asked.stream().noneMatch(name::contains)) {
        continue;
      }
      System.err.println(name);
      List<MadeSheet> usual = MadeSheet.usual(name);
      for (MadeSheet s : usual) {
        page.look(s, missing.isEmpty() ? Optional.of(both) : Optional.empty());
      }
      List<MadeSheet> others = new ArrayList<>(MadeSheet.whole(name));
      others.removeAll(usual);
      Collections.shuffle(others, new Random(SEED + name.hashCode()));
      for (MadeSheet s : all ? others : others.subList(0, OTHERS)) {
        page.look(s, Optional.empty());
      }
    }
    if (words.length == 0 && missing.isEmpty()) {
      Files.writeString(PAGE, page.page());
    } else {
      System.out.print(page.page());
    }
  }

  private void look(MadeSheet sheet, Optional<TwoRenderers> both)
      throws IOException, InterruptedException {
    List<Page> pages = sheet.pages();
    List<String> found = new ArrayList<>(Room.faults(pages));
    boolean proved = false;
    if (sheet.kind() == Kind.CUT) {
      Proof proof = Proof.of(PageWords.of(pages)).orElseThrow();
      List<String> wrong = new ArrayList<>();
      proof.faults().forEach(f -> wrong.add("not proved: " + f));
      wrong.addAll(Comparison.differences(LaidPlans.plan(sheet.name()), proof));
      proved = wrong.isEmpty();
      found.addAll(wrong);
    }
    if (both.isPresent()) {
      List<List<String>> differences = both.get().differences(pages);
      for (int i = 0; i < pages.size(); i++) {
        String at = "page " + (i + 1) + ": ";
        differences.get(i).forEach(d -> found.add(at + d));
      }
    }
    Count count = new Count(1, pages.size(), both.isPresent() ? pages.size() : 0, proved ? 1 : 0);
    counts.merge(sheet.kind(), count, Count::with);
    for (String f : found) {
      faults.add("- " + sheet + ", " + f);
      System.err.println(sheet + ", " + f);
    }
  }

  private String page() {
    Count sum = counts.values().stream().reduce(Count.NONE, Count::with);
    StringBuilder page = new StringBuilder(HEAD);
    page.append(
        String.format(
            Locale.ROOT,
            "**%d sheets, %d pages; %d faults.**\n\n",
            sum.sheets(),
            sum.pages(),
            faults.size()));
    page.append("| kind | sheets | pages | shown by both renderers | proved |\n");
    page.append("|---|---:|---:|---:|---:|\n");
    counts.forEach(
        (kind, c) ->
            page.append(
                String.format(
                    Locale.ROOT,
                    "| %s | %d | %d | %d | %s |\n",
                    kind.name().toLowerCase(Locale.ROOT),
                    c.sheets(),
                    c.pages(),
                    c.compared(),
                    kind == Kind.CUT ? String.valueOf(c.proved()) : "")));
    if (!faults.isEmpty()) {
      page.append("\n## What is wrong\n").append(String.join("\n", faults)).append('\n');
    }
    return page.toString();
  }
}
