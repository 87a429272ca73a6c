package org.jointwright.sheet.pdf;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.jointwright.sheet.page.Ink;
import org.jointwright.sheet.page.Origin;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.SheetSet;

/** Pages as one PDF file, and a PDF's pages as pictures. The same pages give the same bytes. */
public final class PdfSheet {
  static final String PRODUCER = "Jointwright";

  private PdfSheet() {}

  /**
   * The pages as the bytes of one PDF file.
   *
   * @throws IllegalArgumentException when the font has no glyph for a character of a page
   */
  public static byte[] bytes(SheetSet set) {
    try (PDDocument document = new PDDocument()) {
      PdfFonts fonts = new PdfFonts(document);
      for (Page page : set.pages()) {
        PdfPainter.add(page, document, fonts);
      }
      PDDocumentInformation facts = new PDDocumentInformation();
      facts.setTitle(set.title());
      facts.setProducer(PRODUCER);
      // Where there is no date, there is none: the clock is never asked.
      set.date().ifPresent(d -> facts.setCreationDate(calendar(d)));
      document.setDocumentInformation(facts);
      document.getDocumentCatalog().setLanguage(set.language().toLanguageTag());
      if (set.origin().isPresent()) {
        Origin origin = set.origin().get();
        facts.setSubject(origin.job());
        facts.setCreator(origin.program());
        PlanInPdf.add(document, origin.plan());
        Xmp.add(document, set, origin);
      }
      document.getDocument().setDocumentID(id(document, set));
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The file's id: of what is in it, where PDFBox would ask the clock. */
  private static COSArray id(PDDocument document, SheetSet set) throws IOException {
    try {
      MessageDigest digest = MessageDigest.getInstance("MD5");
      for (PDPage page : document.getPages()) {
        try (InputStream painted = page.getContents()) {
          digest.update(painted.readAllBytes());
        }
      }
      set.origin().ifPresent(o -> digest.update(o.plan().getBytes(StandardCharsets.UTF_8)));
      COSString id = new COSString(digest.digest());
      COSArray both = new COSArray();
      both.add(id);
      both.add(id);
      return both;
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Calendar calendar(LocalDate date) {
    Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
    calendar.clear();
    calendar.set(date.getYear(), date.getMonthValue() - 1, date.getDayOfMonth());
    return calendar;
  }

  /** A page of a PDF as the bytes of a PNG picture. */
  public static byte[] picture(byte[] pdf, int page, int dotsPerInch) {
    return picture(pdf, page, dotsPerInch, ImageType.RGB);
  }

  /**
   * Each page of the PDF of a set as the bytes of a PNG picture.
   *
   * @param goOn asked for each page, by any thread
   * @return empty once {@code goOn} has said no
   */
  static Optional<List<byte[]>> pictures(
      SheetSet set, byte[] pdf, int dotsPerInch, BooleanSupplier goOn) {
    // Painting a page takes longest of all; each processor takes one with a document of its own.
    List<Optional<byte[]>> pictures =
        IntStream.range(0, set.pages().size())
            .parallel()
            .mapToObj(
                i ->
                    goOn.getAsBoolean()
                        ? Optional.of(picture(pdf, i, dotsPerInch, colours(set.pages().get(i))))
                        : Optional.<byte[]>empty())
            .toList();
    return pictures.stream().allMatch(Optional::isPresent)
        ? Optional.of(pictures.stream().map(Optional::orElseThrow).toList())
        : Optional.empty();
  }

  /** Greys take a third of the room that colours take. */
  private static ImageType colours(Page page) {
    return page.ink() == Ink.BLACK ? ImageType.GRAY : ImageType.RGB;
  }

  private static byte[] picture(byte[] pdf, int page, int dotsPerInch, ImageType colours) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      BufferedImage image =
          new PDFRenderer(document).renderImageWithDPI(page, dotsPerInch, colours);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ImageIO.write(colours == ImageType.RGB ? inBytes(image) : image, "png", out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The same picture, a byte for each colour: as a PNG holds it, which is written sooner so. */
  private static BufferedImage inBytes(BufferedImage image) {
    BufferedImage bytes =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D g = bytes.createGraphics();
    g.drawImage(image, 0, 0, null);
    g.dispose();
    return bytes;
  }
}
