package org.jointwright.proof.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;

/**
 * The words of a PDF as they stand on its pages. Lines that are drawn, files that are attached and
 * whatever else it holds are not looked at.
 */
public final class PdfWords extends PDFTextStripper {
  private static final double MM = 25.4 / 72;

  /** Letters that stand nearer than this share of their size, and this, go on; millimetres. */
  private static final double GAP = 0.05;

  private final List<Printed> lines = new ArrayList<>();
  private final int page;
  private final double height;
  private final StringBuilder text = new StringBuilder();
  private double x;
  private double y;
  private double endX;
  private double endY;
  private double size;
  private double angle;
  private String font = "";

  private PdfWords(int page, double height) {
    this.page = page;
    this.height = height;
  }

  /**
   * The lines of text, page by page, in the order in which they were printed.
   *
   * @throws IOException when the bytes are no PDF that can be read
   */
  public static List<Printed> of(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<Printed> all = new ArrayList<>();
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        PdfWords reader = new PdfWords(i, document.getPage(i).getMediaBox().getHeight());
        reader.setStartPage(i + 1);
        reader.setEndPage(i + 1);
        reader.getText(document);
        reader.flush();
        all.addAll(reader.lines);
      }
      return all;
    }
  }

  @Override
  protected void processTextPosition(TextPosition glyph) {
    Matrix m = glyph.getTextMatrix();
    double gx = m.getTranslateX() * MM;
    double gy = (height - m.getTranslateY()) * MM;
    double gSize = Math.hypot(m.getScaleX(), m.getShearY()) * MM;
    double gAngle = Math.toDegrees(Math.atan2(m.getShearY(), m.getScaleX()));
    double advance = advance(glyph, gSize);
    String gFont = glyph.getFont().getName();
    boolean goesOn =
        !text.isEmpty()
            && gFont.equals(font)
            && Math.abs(gAngle - angle) < 0.5
            && Math.hypot(gx - endX, gy - endY) < GAP * gSize + GAP;
    if (!goesOn) {
      flush();
      x = gx;
      y = gy;
      size = gSize;
      angle = gAngle;
      font = gFont;
    }
    text.append(glyph.getUnicode());
    size = Math.min(size, gSize);
    endX = gx + advance * Math.cos(Math.toRadians(gAngle));
    endY = gy - advance * Math.sin(Math.toRadians(gAngle));
  }

  /** How far the next glyph stands; PDFBox's own width is measured along x only. */
  private static double advance(TextPosition glyph, double size) {
    try {
      return glyph.getFont().getWidth(glyph.getCharacterCodes()[0]) / 1000 * size;
    } catch (IOException e) {
      return glyph.getWidth() * MM;
    }
  }

  private void flush() {
    if (!text.isEmpty()) {
      String shown = text.toString().replace('\u00a0', ' ').strip();
      double width = Math.hypot(endX - x, endY - y);
      if (!shown.isEmpty()) {
        lines.add(new Printed(page, x, y, width, size, angle, font, shown));
      }
      text.setLength(0);
    }
  }
}
