package org.jointwright.sheet;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.plan.Job;
import org.jointwright.shape.Point;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.Type;
import org.jointwright.text.Words;

/** The title block along the foot of a page. */
final class Foot {
  /** Where its rule stands above the paper's lower edge, millimetres. */
  static final double HEIGHT = 21.5;

  private Foot() {}

  static List<Mark> of(Facts facts, SheetOptions options, String scale, int page, int pages) {
    Job job = facts.plan().job();
    return of(facts.words(), job, options, facts.say("cut.title"), scale, page, pages);
  }

  /**
   * The title block of a page.
   *
   * @param title what the sheet is
   * @param scale its scale; empty for a sheet that draws nothing to scale
   */
  static List<Mark> of(
      Words words, Job job, SheetOptions options, String title, String scale, int page, int pages) {
    Paper paper = options.paper();
    double top = paper.height() - HEIGHT;
    double left = CutSheet.MARGIN;
    double right = paper.width() - CutSheet.MARGIN;
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.Line.of(new Point(left, top), new Point(right, top), 0.9, Role.TEXT));
    marks.add(Type.TITLE.at(left, top + 8.9, title, Anchor.START));
    String count = words.say("sheet.foot.page", String.valueOf(page), String.valueOf(pages));
    marks.add(Type.TITLE.at(right, top + 8.9, count, Anchor.END));
    double from = Math.max(62, left + Type.TITLE.width(title) + 6);
    field(marks, words.say("sheet.foot.job"), job.name(), from, 136 - from, top);
    if (!scale.isEmpty()) {
      field(marks, words.say("sheet.foot.scale"), scale, 141, 30, top);
    }
    field(marks, words.say("sheet.foot.date"), date(words, job, options), 174, 33, top);
    field(marks, words.say("sheet.foot.revision"), job.revision(), 210, 24, top);
    return List.of(new Mark.Group("title-block", "", marks));
  }

  private static void field(
      List<Mark> marks, String head, String text, double x, double width, double top) {
    marks.add(Type.NOTE.at(x, top + 5, head, Anchor.START));
    if (!text.isBlank()) {
      marks.add(Type.NAME.at(x, top + 10.7, Lines.fitting(text, Type.NAME, width), Anchor.START));
    }
  }

  /** The sheet's date: the job's, or else the one given; never the clock's. */
  static Optional<LocalDate> dateOf(Job job, SheetOptions options) {
    String text = job.date().isBlank() ? options.date() : job.date();
    try {
      return text.isBlank() ? Optional.empty() : Optional.of(LocalDate.parse(text.strip()));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private static String date(Words words, Job job, SheetOptions options) {
    return dateOf(job, options)
        .map(d -> DateTimeFormatter.ofPattern("d MMM uuuu", words.locale()).format(d))
        .orElse(job.date());
  }
}
