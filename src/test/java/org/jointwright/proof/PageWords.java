package org.jointwright.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Runs;
import org.jointwright.proof.paper.Printed;
import org.jointwright.sheet.page.Page;

/**
 * The words of pages as a PDF of them would give them, without making one: that takes a second, and
 * there are hundreds. {@link ProofTest} holds that both say the same.
 */
final class PageWords {
  private PageWords() {}

  static List<Printed> of(List<Page> pages) {
    List<Printed> lines = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      add(pages.get(i).marks(), i, lines);
    }
    return lines;
  }

  private static void add(List<Mark> marks, int page, List<Printed> into) {
    for (Mark mark : marks) {
      if (mark instanceof Mark.Group g) {
        add(g.marks(), page, into);
      } else if (mark instanceof Mark.Words w && !w.text().isBlank()) {
        into.add(printed(w, page));
      }
    }
  }

  private static Printed printed(Mark.Words w, int page) {
    double width = Runs.width(w);
    double back = w.anchor() == Anchor.START ? 0 : w.anchor() == Anchor.END ? width : width / 2;
    double angle = Math.toRadians(w.angle());
    String weight = w.weight().name();
    String font = "Face-" + weight.charAt(0) + weight.substring(1).toLowerCase(Locale.ROOT);
    return new Printed(
        page,
        w.at().x() - back * Math.cos(angle),
        w.at().y() + back * Math.sin(angle),
        width,
        w.size(),
        w.angle(),
        font,
        w.text().replace('\u00a0', ' ').strip());
  }
}
