package org.jointwright.sheet.pdf;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Runs;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.sheet.page.Ink;
import org.jointwright.sheet.page.Page;

/**
 * Paints the marks of a page into a PDF, in millimetres with y down, as they are placed. Lines are
 * joined and ended as SVG 1.1 has it, so that both are the same picture.
 */
final class PdfPainter {
  private static final double POINTS_PER_MM = 72 / 25.4;

  /** SVG 1.1, section 11.4: the usual limit of a pointed join. */
  private static final float MITRE = 4;

  private final PDPageContentStream out;
  private final PdfFonts fonts;
  private final Ink ink;

  private PdfPainter(PDPageContentStream out, PdfFonts fonts, Ink ink) {
    this.out = out;
    this.fonts = fonts;
    this.ink = ink;
  }

  /** Adds the page to the document, of exactly its paper's size. */
  static void add(Page page, PDDocument document, PdfFonts fonts) throws IOException {
    float width = (float) (page.paper().width() * POINTS_PER_MM);
    float height = (float) (page.paper().height() * POINTS_PER_MM);
    PDPage sheet = new PDPage(new PDRectangle(width, height));
    document.addPage(sheet);
    try (PDPageContentStream out = new PDPageContentStream(document, sheet)) {
      float scale = (float) POINTS_PER_MM;
      out.transform(new Matrix(scale, 0, 0, -scale, 0, height));
      out.setMiterLimit(MITRE);
      new PdfPainter(out, fonts, page.ink()).paint(page.marks());
    }
  }

  private void paint(List<Mark> marks) throws IOException {
    for (Mark mark : marks) {
      switch (mark) {
        case Mark.Line line -> line(line);
        case Mark.Area area -> area(area);
        case Mark.Words words -> words(words);
        case Mark.Group group -> paint(group.marks());
      }
    }
  }

  private void line(Mark.Line line) throws IOException {
    out.setStrokingColor(tone(line.role(), 16), tone(line.role(), 8), tone(line.role(), 0));
    out.setLineWidth((float) line.width());
    float[] dashes = new float[line.dashes().size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = line.dashes().get(i).floatValue();
    }
    out.setLineDashPattern(dashes, 0);
    path(line.path().edges(), line.path().isClosed());
    out.stroke();
  }

  private void area(Mark.Area area) throws IOException {
    out.setNonStrokingColor(tone(area.role(), 16), tone(area.role(), 8), tone(area.role(), 0));
    for (Ring ring : area.rings()) {
      path(ring.edges(), true);
    }
    if (area.rings().size() > 1) {
      out.fillEvenOdd();
    } else {
      out.fill();
    }
  }

  /** The share of red, green or blue, by how far it stands from the right in the colour. */
  private float tone(Role role, int shift) {
    return (ink.of(role) >> shift & 0xff) / 255f;
  }

  private void path(List<Edge> edges, boolean closed) throws IOException {
    Point start = edges.getFirst().start();
    out.moveTo((float) start.x(), (float) start.y());
    for (Edge edge : edges) {
      if (edge instanceof Arc arc) {
        arc(arc);
      } else {
        out.lineTo((float) edge.end().x(), (float) edge.end().y());
      }
    }
    if (closed) {
      out.closePath();
    }
  }

  /**
   * PDF has no arcs; a Bézier curve over at most an eighth of a turn is off a true one by less than
   * four millionths of its radius (the usual construction, from memory).
   */
  private void arc(Arc arc) throws IOException {
    int parts = (int) Math.ceil(Math.abs(arc.turn()) / (Math.PI / 4) - 1e-9);
    double reach = 4.0 / 3 * Math.tan(Math.abs(arc.turn()) / parts / 4) * arc.radius();
    for (int i = 0; i < parts; i++) {
      double from = (double) i / parts;
      double to = (i + 1.0) / parts;
      Point end = arc.at(to);
      Point first = arc.at(from).plus(arc.direction(from).times(reach));
      Point second = end.minus(arc.direction(to).times(reach));
      out.curveTo(
          (float) first.x(),
          (float) first.y(),
          (float) second.x(),
          (float) second.y(),
          (float) end.x(),
          (float) end.y());
    }
  }

  private void words(Mark.Words words) throws IOException {
    PDFont font = fonts.of(words.weight());
    out.setNonStrokingColor(tone(words.role(), 16), tone(words.role(), 8), tone(words.role(), 0));
    out.beginText();
    out.setTextMatrix(placed(words));
    for (Runs.Run run : Runs.of(words.text())) {
      out.setFont(font, (float) (words.size() * (run.larger() ? words.fraction() : 1)));
      out.showText(run.text());
    }
    out.endText();
  }

  /** Where a line of text begins and which way it runs; its letters stand up against y. */
  private static Matrix placed(Mark.Words words) {
    double share =
        switch (words.anchor()) {
          case START -> 0;
          case MIDDLE -> 0.5;
          case END -> 1;
        };
    double angle = Math.toRadians(words.angle());
    Point along = new Point(Math.cos(angle), -Math.sin(angle));
    double back = words.anchor() == Anchor.START ? 0 : share * Runs.width(words);
    Point start = words.at().minus(along.times(back));
    return new Matrix(
        (float) along.x(),
        (float) along.y(),
        (float) along.y(),
        (float) -along.x(),
        (float) start.x(),
        (float) start.y());
  }
}
