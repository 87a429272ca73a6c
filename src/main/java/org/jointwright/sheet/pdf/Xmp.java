package org.jointwright.sheet.pdf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.jointwright.sheet.page.Origin;
import org.jointwright.sheet.page.SheetSet;

/**
 * What a PDF says of itself to programs that keep files (XMP, ISO 16684-1, from memory; PDF 1.7,
 * ISO 32000-1, section 14.3.2): the same title, job, date and program as in its information
 * dictionary.
 */
final class Xmp {
  private final StringBuilder out = new StringBuilder();

  private Xmp() {}

  /** Adds it to a document. */
  static void add(PDDocument document, SheetSet set, Origin origin) throws IOException {
    PDMetadata metadata = new PDMetadata(document);
    metadata.importXMPMetadata(new Xmp().packet(set, origin).getBytes(StandardCharsets.UTF_8));
    document.getDocumentCatalog().setMetadata(metadata);
  }

  private String packet(SheetSet set, Origin origin) {
    out.append("<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n");
    out.append("<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n");
    out.append("<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n");
    out.append("<rdf:Description rdf:about=\"\"");
    out.append(" xmlns:dc=\"http://purl.org/dc/elements/1.1/\"");
    out.append(" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\"");
    out.append(" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\">\n");
    term("dc:format", "application/pdf");
    inLanguage("dc:title", set.title());
    inLanguage("dc:description", origin.job());
    term("dc:language", "Bag", set.language().toLanguageTag());
    set.date().ifPresent(d -> term("xmp:CreateDate", d.toString()));
    term("xmp:CreatorTool", origin.program());
    term("pdf:Producer", PdfSheet.PRODUCER);
    out.append("</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>");
    return out.toString();
  }

  private void term(String name, String value) {
    out.append('<').append(name).append('>').append(escaped(value));
    out.append("</").append(name).append(">\n");
  }

  /** A term that may be said in several languages is a list of them, the usual one named so. */
  private void inLanguage(String name, String value) {
    if (!value.isBlank()) {
      listed(name, "Alt", " xml:lang=\"x-default\"", value);
    }
  }

  private void term(String name, String list, String value) {
    listed(name, list, "", value);
  }

  private void listed(String name, String list, String attribute, String value) {
    out.append('<').append(name).append("><rdf:").append(list).append("><rdf:li");
    out.append(attribute).append('>').append(escaped(value)).append("</rdf:li></rdf:");
    out.append(list).append("></").append(name).append(">\n");
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
