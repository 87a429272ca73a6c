package org.jointwright.sheet.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.plan.Job;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.Type;
import org.jointwright.text.Words;

/**
 * Sheets that are printed together, their pages numbered through.
 *
 * @param title what they are, as the title of the file
 * @param language the language they are written in
 * @param date their date where they have one
 * @param entries the sheets in their order
 * @param pages their pages
 * @param origin what they were printed from; empty for a picture that tells nothing of itself
 */
public record SheetSet(
    String title,
    Locale language,
    Optional<LocalDate> date,
    List<Entry> entries,
    List<Page> pages,
    Optional<Origin> origin) {
  /** What is left free above the title block of a first page for the index, millimetres. */
  public static final double INDEX = 6;

  /** Copies the lists. */
  public SheetSet {
    entries = List.copyOf(entries);
    pages = List.copyOf(pages);
  }

  /** Pages that tell nothing of what they were printed from. */
  public SheetSet(
      String title,
      Locale language,
      Optional<LocalDate> date,
      List<Entry> entries,
      List<Page> pages) {
    this(title, language, date, entries, pages, Optional.empty());
  }

  /** The same pages, with what they were printed from. */
  public SheetSet from(Origin from) {
    return new SheetSet(title, language, date, entries, pages, Optional.of(from));
  }

  /**
   * A sheet of the set.
   *
   * @param title what it is
   * @param first the number of its first page, from 1
   * @param count how many pages it has
   */
  public record Entry(String title, int first, int count) {}

  /**
   * Numbers the pages of sheets, and lists the sheets on the first page where there are several: it
   * must be one that leaves room for that.
   */
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
      pages.set(0, indexed(pages.getFirst(), entries, options.words()));
      title = options.words().say("sheet.set.title");
    }
    String name = Lines.known(job.name());
    return new SheetSet(
        name.isEmpty() ? title : options.words().say("sheet.set.of", name, title),
        options.words().locale(),
        Foot.dateOf(job, options),
        entries,
        pages.stream().map(p -> whole(p, options.paper())).toList());
  }

  /** A page that was laid out with type as on letter paper, as large as its paper is. */
  private static Page whole(Page page, Paper lying) {
    boolean lies = page.paper().width() > page.paper().height();
    return new Page(
        page.title(),
        page.description(),
        lies ? lying : lying.turned(),
        page.ink(),
        Enlarged.of(page.marks(), lying.type()));
  }

  private static Page indexed(Page page, List<Entry> entries, Words words) {
    List<String> listed = new ArrayList<>();
    for (Entry e : entries) {
      String first = String.valueOf(e.first());
      String last = String.valueOf(e.first() + e.count() - 1);
      listed.add(
          e.count() == 1
              ? words.say("sheet.index.page", first, e.title())
              : words.say("sheet.index.pages", first, last, e.title()));
    }
    double y = page.paper().height() - Foot.height(page.paper()) - 2.2;
    Mark.Words line =
        Type.NOTE.at(
            Foot.MARGIN, y, words.say("sheet.index", String.join(",  ", listed)), Anchor.START);
    List<Mark> marks = new ArrayList<>(page.marks());
    marks.add(new Mark.Group("index", "", List.of(line)));
    return new Page(page.title(), page.description(), page.paper(), page.ink(), marks);
  }
}
