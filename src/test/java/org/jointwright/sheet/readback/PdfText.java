package org.jointwright.sheet.readback;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;

/** The lines of text of a PDF, with their places. */
final class PdfText extends PDFTextStripper {
  private static final double MM = 25.4 / 72;

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

  private PdfText(int page, double height) {
    this.page = page;
    this.height = height;
  }

  static List<Printed> of(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<Printed> all = new ArrayList<>();
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        PdfText reader = new PdfText(i, document.getPage(i).getMediaBox().getHeight());
        reader.setStartPage(i + 1);
        reader.setEndPage(i + 1);
        reader.getText(document);
        reader.flush();
        all.addAll(reader.lines);
      }
      return all;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
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
            && Math.hypot(gx - endX, gy - endY) < 0.05 * gSize + 0.05;
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
      throw new java.io.UncheckedIOException(e);
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
