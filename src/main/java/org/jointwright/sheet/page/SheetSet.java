package org.jointwright.sheet.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jointwright.drawing.Mark;
import org.jointwright.plan.Job;
import org.jointwright.sheet.block.Lines;

/**
 * Sheets that are printed together, their pages numbered through.
 *
 * @param title what they are, as the title of the file
 * @param language the language they are written in
 * @param date their date where they have one
 * @param entries the sheets in their order
 * @param pages their pages
 */
public record SheetSet(
    String title,
    Locale language,
    Optional<LocalDate> date,
    List<Entry> entries,
    List<Page> pages) {
  /** Copies the lists. */
  public SheetSet {
    entries = List.copyOf(entries);
    pages = List.copyOf(pages);
  }

  /**
   * A sheet of the set.
   *
   * @param title what it is
   * @param first the number of its first page, from 1
   * @param count how many pages it has
   */
  public record Entry(String title, int first, int count) {}

  /** Numbers the pages of sheets. */
  public static SheetSet of(List<Sheet> sheets, Job job, SheetOptions options) {
    int all = sheets.stream().mapToInt(s -> s.leaves().size()).sum();
    List<Entry> entries = new ArrayList<>();
    List<Page> pages = new ArrayList<>();
    for (Sheet sheet : sheets) {
      entries.add(new Entry(sheet.title(), pages.size() + 1, sheet.leaves().size()));
      for (List<Mark> leaf : sheet.leaves()) {
        List<Mark> marks = new ArrayList<>(leaf);
        marks.addAll(Foot.of(sheet, job, options, pages.size() + 1, all));
        pages.add(new Page(sheet.title(), sheet.description(), sheet.paper(), sheet.ink(), marks));
      }
    }
    String title = sheets.getFirst().title();
    if (sheets.size() > 1) {
      title = options.words().say("sheet.set.title");
    }
    String name = Lines.known(job.name());
    return new SheetSet(
        name.isEmpty() ? title : options.words().say("sheet.set.of", name, title),
        options.words().locale(),
        Foot.dateOf(job, options),
        entries,
        pages);
  }
}
