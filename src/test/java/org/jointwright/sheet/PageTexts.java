package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Mark;
import org.jointwright.sheet.page.Page;

/** The texts of a page, in the order they are drawn. */
final class PageTexts {
  private PageTexts() {}

  static List<String> of(Page page) {
    return in(page.marks());
  }

  /** The texts of marks. */
  static List<String> in(List<Mark> marks) {
    List<String> texts = new ArrayList<>();
    collect(marks, texts);
    return texts;
  }

  private static void collect(List<Mark> marks, List<String> texts) {
    for (Mark mark : marks) {
      switch (mark) {
        case Mark.Words w -> texts.add(w.text());
        case Mark.Group g -> collect(g.marks(), texts);
        case Mark.Line l -> {}
        case Mark.Area a -> {}
      }
    }
  }
}
