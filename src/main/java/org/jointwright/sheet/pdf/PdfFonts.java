package org.jointwright.sheet.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.jointwright.drawing.Weight;

/** The fonts of a document, each embedded once, with the glyphs that its pages use. */
final class PdfFonts {
  private final PDDocument document;
  private final Map<Weight, PDFont> fonts = new EnumMap<>(Weight.class);

  PdfFonts(PDDocument document) {
    this.document = document;
  }

  PDFont of(Weight weight) {
    return fonts.computeIfAbsent(weight, this::load);
  }

  private PDFont load(Weight weight) {
    try (InputStream in =
        Objects.requireNonNull(PdfFonts.class.getResourceAsStream(weight.resource()))) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
      // No ligatures: their glyphs are as wide as nobody measured.
      font.setEnableGsub(false);
      return PDType0Font.load(document, font, true);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
