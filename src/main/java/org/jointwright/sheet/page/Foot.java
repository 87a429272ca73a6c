package org.jointwright.sheet.page;

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

/** The title block along the foot of a page: in one row, or in two where the page is narrow. */
public final class Foot {
  /** Between the paper's edge and everything, millimetres. */
  public static final double MARGIN = 10;

  private static final double ROW = 11.3;

  /** Narrower pages have what they are and what they are of in two rows; millimetres. */
  private static final double NARROW = 250;

  private Foot() {}

  /** Where the rule of the title block stands above the paper's lower edge, millimetres. */
  public static double height(Paper paper) {
    return MARGIN + ROW + 0.2 + (isNarrow(paper) ? ROW : 0);
  }

  private static boolean isNarrow(Paper paper) {
    return paper.width() < NARROW;
  }

  /** The title block of the page of that number among so many. */
  static List<Mark> of(Sheet sheet, Job job, SheetOptions options, int page, int pages) {
    Words words = options.words();
    Paper paper = sheet.paper();
    double top = paper.height() - height(paper);
    double right = paper.width() - MARGIN;
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.Line.of(new Point(MARGIN, top), new Point(right, top), 0.9, Role.TEXT));
    marks.add(Type.TITLE.at(MARGIN, top + 8.9, sheet.title(), Anchor.START));
    String count = words.say("sheet.foot.page", String.valueOf(page), String.valueOf(pages));
    marks.add(Type.TITLE.at(right, top + 8.9, count, Anchor.END));
    double from = MARGIN;
    double to = right;
    if (isNarrow(paper)) {
      top += ROW;
    } else {
      from = Math.max(62, MARGIN + Type.TITLE.width(sheet.title()) + 6);
      to -= Math.max(35.4, Type.TITLE.width(count) + 6);
    }
    field(marks, words.say("sheet.foot.revision"), job.revision(), to - 24, 24, top);
    field(marks, words.say("sheet.foot.date"), date(words, job, options), to - 60, 33, top);
    if (!sheet.scale().isEmpty()) {
      field(marks, words.say("sheet.foot.scale"), sheet.scale(), to - 93, 30, top);
    }
    field(marks, words.say("sheet.foot.job"), job.name(), from, to - 98 - from, top);
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
