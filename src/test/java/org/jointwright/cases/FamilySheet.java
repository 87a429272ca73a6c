package org.jointwright.cases;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Pens;
import org.jointwright.drawing.PlanDrawing;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.drawing.Weight;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.sheet.pdf.PdfSheet;

/**
 * Draws the cases to be looked at, a sheet for each family, what the engine lays on the left and
 * the best layout known on the right: {@code mvn -q -Pfamilies}. Told parts of names, it draws the
 * cases and families that hold one of them.
 */
final class FamilySheet {
  private static final Path FOLDER = Path.of("target/families");

  /** One drawing, and what stands over it, millimetres. */
  private static final double SIDE = 88;

  private static final double HEAD = 7;
  private static final double GAP = 10;

  /** Room for what stands beside the slabs, inches of the plan. */
  private static final double BESIDE = 12;

  private static final int DOTS_PER_INCH = 130;

  private FamilySheet() {}

  public static void main(String[] parts) throws IOException {
    Map<String, List<OpenCase>> families = new TreeMap<>();
    for (OpenCase open : OpenCase.all()) {
      if (parts.length == 0 || open.isNamedBy(List.of(parts))) {
        families.computeIfAbsent(open.family(), k -> new ArrayList<>()).add(open);
      }
    }
    Files.createDirectories(FOLDER);
    try (PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8)) {
      for (Map.Entry<String, List<OpenCase>> family : families.entrySet()) {
        Path png = FOLDER.resolve(family.getKey() + ".png");
        byte[] pdf =
            PdfSheet.bytes(
                new SheetSet(
                    "cases",
                    Locale.ENGLISH,
                    Optional.empty(),
                    List.of(),
                    List.of(page(family.getValue()))));
        Files.write(png, PdfSheet.picture(pdf, 0, DOTS_PER_INCH));
        out.println(png);
      }
    }
  }

  /** A page of these cases, two abreast. */
  static Page page(List<OpenCase> cases) {
    List<Mark> marks = new ArrayList<>();
    int abreast = Math.min(2, cases.size());
    double wide = 2 * SIDE + 2 * GAP;
    double high = SIDE + HEAD + GAP;
    for (int i = 0; i < cases.size(); i++) {
      marks.addAll(pair(cases.get(i), new Point((i % 2) * wide + GAP, (i / 2) * high + HEAD)));
    }
    int rows = (cases.size() + 1) / 2;
    return new Page(
        "cases", "", new Paper("cases", abreast * wide + GAP, rows * high + GAP, 1), marks);
  }

  private static List<Mark> pair(OpenCase open, Point at) {
    Plan asked = open.plan();
    Layout ours = LayoutEngine.lay(asked);
    Layout best = Layouts.of(open.reference());
    List<Mark> marks = new ArrayList<>();
    marks.add(words(at, open.name() + "   " + told(Measured.of(asked, ours))));
    Point beside = at.plus(new Point(SIDE + GAP, 0));
    marks.add(words(beside, told(Measured.of(asked, best))));
    marks.add(drawn(ours, at));
    marks.add(drawn(best, beside));
    return marks;
  }

  private static String told(Measured m) {
    return String.format(Locale.ROOT, "%.1f, %.1f tees ", m.cost(), m.tees())
        + String.join(" ", m.broken());
  }

  private static Mark words(Point at, String text) {
    return Mark.Words.level(
        at.plus(new Point(0, -2)), text, 3, Weight.REGULAR, Anchor.START, Role.TEXT);
  }

  /** A layout that fills the square whose upper left corner is here. */
  private static Mark drawn(Layout layout, Point at) {
    Box box =
        layout.plan().slabs().stream()
            .map(Slab::outline)
            .map(o -> o.ring().box())
            .reduce(Box::with)
            .orElseThrow()
            .grown(BESIDE);
    double scale = SIDE / Math.max(box.width(), box.height());
    Point origin = at.plus(new Point(-box.minX() * scale, SIDE + box.minY() * scale));
    return PlanDrawing.of(layout, new View(origin, scale, 0), Pens.PAPER.times(0.5));
  }
}
