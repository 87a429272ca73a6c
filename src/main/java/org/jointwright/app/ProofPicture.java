package org.jointwright.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.JointMarks;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Pens;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.drawing.Weight;
import org.jointwright.plan.JointKind;
import org.jointwright.proof.Proof;
import org.jointwright.proof.ProofWords;
import org.jointwright.proof.build.BoxOutShape;
import org.jointwright.proof.build.Rebuilt;
import org.jointwright.proof.read.Block;
import org.jointwright.proof.read.Reading;
import org.jointwright.shape.Box;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.sheet.pdf.PdfSheet;
import org.jointwright.sheet.svg.SvgPage;

/** Draws what was rebuilt from a printed sheet: no line of it is taken from the sheet itself. */
final class ProofPicture {
  private static final double MARGIN = 14;

  /** How far a letter stands off its corner, away from the middle of the job; millimetres. */
  private static final double OFF = 4;

  /** How much being away from the middle counts beside being away from the sides. */
  private static final double FAINT = 0.001;

  /** Where two sides leave a corner nearly in one line, its letter stands square to them. */
  private static final double STRAIGHT = 0.6;

  /** The least width of filler; it is told by the pattern, not by its width. */
  private static final double FILLER = 0;

  private static final double TEXT = 4.2;
  private static final double FINE = 3.6;
  private static final int DOTS_PER_INCH = 200;
  private static final double LINE = 5;

  /** Where along a joint its number may stand. */
  private static final double[] SHARES = {0.5, 0.35, 0.65, 0.2, 0.8};

  private final Proof proof;
  private final Rebuilt rebuilt;
  private final View view;
  private final Point middle;
  private final List<String> lines;

  ProofPicture(Proof proof) {
    this.proof = proof;
    this.rebuilt = proof.closing().rebuilt();
    this.lines = new ProofWords(proof).lines();
    Box box = box();
    Paper paper = Paper.LETTER;
    double high = paper.height() - 2 * MARGIN - lines.size() * LINE;
    double scale =
        Math.min(
            (paper.width() - 2 * MARGIN) / Math.max(1, box.width()),
            Math.max(30, high) / Math.max(1, box.height()));
    this.middle = box.centre();
    Point centre = new Point(paper.width() / 2, MARGIN + Math.max(30, high) / 2);
    Point flat = new View(new Point(0, 0), scale, 0).on(middle);
    this.view = new View(centre.minus(flat), scale, 0);
  }

  private Box box() {
    Stream<Box> boxes =
        Stream.concat(
            rebuilt.sides().values().stream().flatMap(p -> p.edges().stream()).map(e -> e.box()),
            rebuilt.corners().values().stream().map(p -> Box.of(p, p)));
    return boxes
        .reduce((a, b) -> a.with(new Point(b.minX(), b.minY())).with(new Point(b.maxX(), b.maxY())))
        .orElse(Box.of(new Point(0, 0), new Point(1, 1)));
  }

  byte[] bytes(boolean svg) {
    String title = lines.getFirst();
    Page page = new Page(title, String.join(" ", lines), Paper.LETTER, marks());
    if (svg) {
      return SvgPage.bytes(page);
    }
    Locale language = proof.reading().language().locale();
    SheetSet one = new SheetSet(title, language, Optional.empty(), List.of(), List.of(page));
    return PdfSheet.picture(PdfSheet.bytes(one), 0, DOTS_PER_INCH);
  }

  private List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    for (Path side : rebuilt.sides().values()) {
      marks.add(Mark.Line.of(view.on(side), Pens.PAPER.outline(), Role.OUTLINE));
    }
    for (Map.Entry<Integer, Path> e : rebuilt.joints().entrySet()) {
      marks.addAll(JointMarks.joint(kind(e.getKey()), view.on(e.getValue()), FILLER, Pens.PAPER));
    }
    rebuilt.boxOuts().values().forEach(b -> marks.addAll(boxOut(b)));
    rebuilt.joints().forEach((number, path) -> marks.add(number(number, free(number, path))));
    rebuilt.boxOuts().forEach((number, shape) -> marks.add(number(number, shape.middle())));
    rebuilt.corners().forEach((letter, p) -> marks.add(letter(letter, p)));
    double y = Paper.LETTER.height() - MARGIN - (lines.size() - 1) * LINE;
    for (String line : lines) {
      Point at = new Point(MARGIN, y);
      marks.add(Mark.Words.level(at, line.strip(), FINE, Weight.MEDIUM, Anchor.START, Role.TEXT));
      y += LINE;
    }
    return marks;
  }

  /** Of a few places along a joint the one that is farthest from all others. */
  private Point free(int number, Path path) {
    Point best = path.middle();
    double most = 0;
    for (double share : SHARES) {
      Point at = path.edges().getFirst().at(share);
      double near =
          rebuilt.joints().entrySet().stream()
              .filter(e -> e.getKey() != number)
              .mapToDouble(e -> e.getValue().distance(at))
              .min()
              .orElse(0);
      if (near > most + 1) {
        most = near;
        best = at;
      }
    }
    return best;
  }

  private JointKind kind(int number) {
    Optional<Reading.Row> row =
        proof.reading().rows().stream().filter(r -> r.number() == number).findFirst();
    return row.map(r -> r.block() == Block.FORM ? JointKind.CONSTRUCTION : JointKind.CONTRACTION)
        .orElse(JointKind.ISOLATION);
  }

  private List<Mark> boxOut(BoxOutShape shape) {
    Ring ring =
        shape.radius().isPresent()
            ? Rings.circle(view.on(shape.middle()), shape.radius().getAsDouble() * view.scale())
            : Ring.of(shape.corners().stream().map(view::on).toList());
    return List.of(
        Mark.Area.of(ring, Role.PAPER),
        Mark.Line.of(new Path(ring.edges()), Pens.PAPER.outline(), Role.OUTLINE));
  }

  private Mark number(int number, Point at) {
    Point p = view.on(at);
    String text = String.valueOf(number);
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.Area.of(Rings.circle(p, 0.6 * TEXT), Role.PAPER));
    marks.add(
        Mark.Words.level(
            p.plus(new Point(0, 0.35 * TEXT)), text, TEXT, Weight.HEAVY, Anchor.MIDDLE, Role.TEXT));
    return new Mark.Group("number-" + number, "", marks);
  }

  private Mark letter(String letter, Point corner) {
    Point p = view.on(corner);
    Point away = p.minus(view.on(middle)).times(FAINT);
    Point square = away;
    for (Path side : rebuilt.sides().values()) {
      for (boolean first : new boolean[] {true, false}) {
        if ((first ? side.start() : side.end()).equals(corner)) {
          Point along =
              first
                  ? side.edges().getFirst().direction(0)
                  : side.edges().getLast().direction(1).times(-1);
          Point heading = view.heading(along);
          away = away.minus(heading);
          square = heading.left();
        }
      }
    }
    if (away.norm() < STRAIGHT) {
      Point out = p.minus(view.on(middle));
      away = square.dot(out) < 0 ? square.times(-1) : square;
    }
    Point off = away.norm() > 0 ? away.unit().times(OFF) : new Point(0, -OFF);
    Point at = p.plus(off).plus(new Point(0, 0.35 * TEXT));
    return Mark.Words.level(at, letter, TEXT, Weight.HEAVY, Anchor.MIDDLE, Role.TEXT);
  }
}
