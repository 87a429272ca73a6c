package org.jointwright.sheet.owner;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Job;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.Type;
import org.jointwright.sheet.page.Caution;
import org.jointwright.sheet.page.Foot;
import org.jointwright.sheet.page.Ink;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.Scale;
import org.jointwright.sheet.page.Sheet;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.takeoff.Takeoff;
import org.jointwright.text.Words;

/**
 * The owner’s plan: one page to look at and to sign. It holds nothing that only a crew needs, and
 * leaves room for what the program does not know: finish, price and choices.
 */
public final class OwnersPlan {
  private static final double COLUMN = 55;
  private static final double GAP = 7;
  private static final double HEAD = 17;
  private static final double PITCH = 4.7;

  /** What the place to say yes takes above the foot, millimetres. */
  private static final double YES = 27;

  private final Layout layout;
  private final Takeoff takeoff;
  private final Words words;
  private final Paper paper;

  private OwnersPlan(Layout layout, Takeoff takeoff, SheetOptions options) {
    this.layout = layout;
    this.takeoff = takeoff;
    this.words = options.words();
    this.paper = options.paper().laidOut();
  }

  /** The owner's plan for a layout and what it takes, on paper that lies. */
  public static Sheet sheet(Layout layout, Takeoff takeoff, SheetOptions options) {
    return new OwnersPlan(layout, takeoff, options).sheet();
  }

  private Sheet sheet() {
    double right = paper.width() - Foot.MARGIN;
    double low = paper.height() - Foot.height(paper) - SheetSet.INDEX;
    double beside = right - COLUMN;
    List<String> because = new ArrayList<>();
    List<String> said = new ArrayList<>(List.of(words.say("sheet.owner.because")));
    said.add(
        String.join(
            " ",
            Caution.say(words, layout.plan(), Caution.KEEP_AWAY, Caution.LOADS, Caution.CODES)));
    for (String sentences : said) {
      because.addAll(Lines.wrap(sentences, Type.NOTE, beside - GAP - Foot.MARGIN));
    }
    double notes = low - because.size() * PITCH - 6.5;
    Box room = new Box(Foot.MARGIN, 10 + HEAD, beside - GAP, notes - 5);
    Picture picture = Picture.of(layout, words, Scale.series(words.units(), paper.type()), room);
    List<Mark> marks = new ArrayList<>(headline(right));
    marks.addAll(picture.marks());
    Point corner = new Point(beside, 10 + HEAD);
    marks.add(Column.above(low - YES, layout, takeoff, words, corner, right));
    marks.add(notes(because, notes));
    marks.add(yes(beside, right, low));
    return new Sheet(
        words.say("sheet.owner.title"),
        words.say("sheet.owner.description", Lines.known(layout.plan().job().name())),
        paper,
        Ink.COLOURED,
        picture.scale().label(),
        List.of(marks));
  }

  private List<Mark> headline(double right) {
    Job job = layout.plan().job();
    String whose = job.site().isBlank() ? job.client() : job.site();
    double room = (right - Foot.MARGIN) / 3;
    String beside = Lines.fitting(whose, Type.TABLE, room);
    String name = job.name().isBlank() ? words.say("sheet.owner.new") : job.name();
    double wide = right - Foot.MARGIN - (beside.isEmpty() ? 0 : Type.TABLE.width(beside) + 6);
    List<Mark> marks = new ArrayList<>();
    marks.add(
        Type.HEADLINE.at(Foot.MARGIN, 20, Lines.fitting(name, Type.HEADLINE, wide), Anchor.START));
    if (!beside.isEmpty()) {
      marks.add(Type.TABLE.at(right, 20, beside, Anchor.END));
    }
    return List.of(new Mark.Group("headline", "", marks));
  }

  /** Why there are joints and what to take care of. */
  private Mark notes(List<String> lines, double top) {
    List<Mark> marks = new ArrayList<>();
    marks.add(Type.HEAD.at(Foot.MARGIN, top + 3, words.say("sheet.owner.why"), Anchor.START));
    for (int i = 0; i < lines.size(); i++) {
      marks.add(Type.NOTE.at(Foot.MARGIN, top + 8.8 + i * PITCH, lines.get(i), Anchor.START));
    }
    return new Mark.Group("notes", "", marks);
  }

  /** Where the owner says yes. */
  private Mark yes(double from, double right, double low) {
    List<Mark> marks = new ArrayList<>();
    double sign = low - 6;
    double date = from + (right - from) * 0.6;
    marks.add(Type.HEAD.at(from, sign - 14, words.say("sheet.owner.yes"), Anchor.START));
    marks.add(rule(from, date - 4, sign));
    marks.add(rule(date, right, sign));
    marks.add(Type.NOTE.at(from, sign + 4.7, words.say("sheet.owner.name"), Anchor.START));
    marks.add(Type.NOTE.at(date, sign + 4.7, words.say("sheet.owner.date"), Anchor.START));
    return new Mark.Group("yes", "", marks);
  }

  private static Mark rule(double from, double to, double y) {
    return Mark.Line.of(new Point(from, y), new Point(to, y), 0.25, Role.TEXT);
  }
}
