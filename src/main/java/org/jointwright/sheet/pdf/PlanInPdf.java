package org.jointwright.sheet.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.PDNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.jointwright.sheet.page.NoPlanInsideException;
import org.jointwright.sheet.page.NoPlanInsideException.Why;
import org.jointwright.sheet.page.PlanInside;

/**
 * The plan inside the PDF of its sheets: an embedded file (PDF 1.7, ISO 32000-1, section 7.11.4)
 * that is named as the source of the document (ISO 32000-2, section 14.13). Viewers list it among
 * the attachments.
 */
public final class PlanInPdf {
  private static final String NAME = "plan.jointwright.json";

  /** How far into a file its head may stand (PDF 1.7, annex H.3, note 13; from memory). */
  private static final int HEAD = 1024;

  /** Trees of names are no deeper: each level holds dozens. */
  private static final int DEEPEST = 16;

  /** Plans that are longer are not read from a file of their own either, bytes. */
  private static final int LONGEST = 64 * 1024 * 1024;

  private PlanInPdf() {}

  /** Embeds a plan. */
  static void add(PDDocument document, String plan) throws IOException {
    byte[] bytes = plan.getBytes(StandardCharsets.UTF_8);
    PDEmbeddedFile file =
        new PDEmbeddedFile(document, new ByteArrayInputStream(bytes), COSName.FLATE_DECODE);
    file.setSubtype("application/json");
    file.setSize(bytes.length);
    COSDictionary facts = file.getCOSObject().getCOSDictionary(COSName.PARAMS);
    facts.setItem(COSName.CHECK_SUM, new COSString(sum(bytes)));
    PDComplexFileSpecification named = new PDComplexFileSpecification();
    named.setFile(NAME);
    named.setFileUnicode(NAME);
    named.setEmbeddedFile(file);
    named.setEmbeddedFileUnicode(file);
    named.getCOSObject().setName(COSName.AF_RELATIONSHIP, "Source");
    PDEmbeddedFilesNameTreeNode all = new PDEmbeddedFilesNameTreeNode();
    all.setNames(Map.of(NAME, named));
    PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
    names.setEmbeddedFiles(all);
    document.getDocumentCatalog().setNames(names);
    COSArray sources = new COSArray();
    sources.add(named.getCOSObject());
    document.getDocumentCatalog().getCOSObject().setItem(COSName.AF, sources);
  }

  /** Whether a file can be a PDF, by how it begins. */
  public static boolean looksLikeOne(byte[] file) {
    String head = new String(file, 0, Math.min(HEAD, file.length), StandardCharsets.ISO_8859_1);
    return head.contains("%PDF-");
  }

  /** The plan in a PDF. */
  public static PlanInside of(byte[] pdf) throws NoPlanInsideException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
      List<PDComplexFileSpecification> found = new ArrayList<>();
      if (names != null && names.getEmbeddedFiles() != null) {
        collect(names.getEmbeddedFiles(), 0, found);
      }
      if (found.size() != 1) {
        throw new NoPlanInsideException(found.isEmpty() ? Why.NONE : Why.SEVERAL, 0);
      }
      return read(found.getFirst());
    } catch (InvalidPasswordException e) {
      throw new NoPlanInsideException(Why.LOCKED, 0);
    } catch (IOException | RuntimeException e) {
      // A document from anywhere may hold what its reader did not look for.
      throw new NoPlanInsideException(Why.BROKEN, 0);
    }
  }

  private static void collect(
      PDNameTreeNode<PDComplexFileSpecification> node,
      int depth,
      List<PDComplexFileSpecification> found)
      throws IOException {
    if (depth > DEEPEST) {
      throw new IOException("names within names without end");
    }
    Map<String, PDComplexFileSpecification> names = node.getNames();
    if (names != null) {
      names.values().stream().filter(f -> NAME.equals(f.getFilename())).forEach(found::add);
    }
    if (node.getKids() != null) {
      for (PDNameTreeNode<PDComplexFileSpecification> kid : node.getKids()) {
        collect(kid, depth + 1, found);
      }
    }
  }

  private static PlanInside read(PDComplexFileSpecification named)
      throws IOException, NoPlanInsideException {
    PDEmbeddedFile file = named.getEmbeddedFile();
    if (file == null) {
      throw new NoPlanInsideException(Why.NONE, 0);
    }
    byte[] bytes;
    try (InputStream in = file.createInputStream()) {
      // However small it is packed: what is longer than any plan is none.
      bytes = in.readNBytes(LONGEST + 1);
    }
    if (bytes.length > LONGEST) {
      throw new NoPlanInsideException(Why.BROKEN, 0);
    }
    COSDictionary facts = file.getCOSObject().getCOSDictionary(COSName.PARAMS);
    boolean isAsPrinted =
        facts != null
            && facts.getDictionaryObject(COSName.CHECK_SUM) instanceof COSString s
            && MessageDigest.isEqual(s.getBytes(), sum(bytes));
    return new PlanInside(new String(bytes, StandardCharsets.UTF_8), NAME, 1, isAsPrinted);
  }

  /** The check sum that PDF asks for: MD5 (section 7.11.4.2, table 46). */
  private static byte[] sum(byte[] bytes) {
    try {
      return MessageDigest.getInstance("MD5").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
