package org.jointwright.sheet.pdf;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.jointwright.sheet.Page;
import org.jointwright.sheet.svg.SvgPage;

/** Pages as one PDF file, and a PDF's pages as pictures. The same pages give the same bytes. */
public final class PdfSheet {
  private PdfSheet() {}

  /**
   * The pages as the bytes of one PDF file.
   *
   * @param title the document's title
   * @param date its date where there is one; the clock is never asked
   * @throws IllegalArgumentException when the font has no glyph for a character of a page
   */
  public static byte[] bytes(List<Page> pages, String title, Optional<LocalDate> date) {
    try {
      byte[] merged = merge(pages);
      try (PDDocument document = Loader.loadPDF(merged)) {
        PDDocumentInformation facts = new PDDocumentInformation();
        facts.setTitle(title);
        facts.setProducer("Jointwright");
        date.ifPresent(d -> facts.setCreationDate(calendar(d)));
        document.setDocumentInformation(facts);
        document.getDocumentCatalog().setMetadata(null);
        document.getDocumentCatalog().setLanguage("en");
        document.getDocument().setDocumentID(id(pages));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The file's id: of what is on its pages, where PDFBox would ask the clock. */
  private static COSArray id(List<Page> pages) {
    try {
      MessageDigest digest = MessageDigest.getInstance("MD5");
      pages.forEach(p -> digest.update(SvgPage.bytes(p)));
      COSString id = new COSString(digest.digest());
      COSArray both = new COSArray();
      both.add(id);
      both.add(id);
      return both;
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static byte[] merge(List<Page> pages) throws IOException {
    if (pages.size() == 1) {
      return PdfPage.bytes(pages.getFirst());
    }
    PDFMergerUtility merger = new PDFMergerUtility();
    for (Page page : pages) {
      merger.addSource(new RandomAccessReadBuffer(PdfPage.bytes(page)));
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    merger.setDestinationStream(out);
    merger.mergeDocuments(IOUtils.createMemoryOnlyStreamCache());
    return out.toByteArray();
  }

  private static Calendar calendar(LocalDate date) {
    Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
    calendar.clear();
    calendar.set(date.getYear(), date.getMonthValue() - 1, date.getDayOfMonth());
    return calendar;
  }

  /** A page of a PDF as the bytes of a PNG picture. */
  public static byte[] picture(byte[] pdf, int page, int dotsPerInch) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      BufferedImage image =
          new PDFRenderer(document).renderImageWithDPI(page, dotsPerInch, ImageType.RGB);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ImageIO.write(image, "png", out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
