package org.jointwright.sheet.pdf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.fop.configuration.Configuration;
import org.apache.fop.configuration.ConfigurationException;
import org.apache.fop.configuration.DefaultConfigurationBuilder;
import org.apache.fop.svg.PDFTranscoder;
import org.jointwright.drawing.Weight;
import org.jointwright.sheet.Page;
import org.jointwright.sheet.svg.SvgPage;

/** One page as a PDF made from its SVG, the fonts embedded. */
final class PdfPage {
  private PdfPage() {}

  static byte[] bytes(Page page) {
    PDFTranscoder transcoder = new PDFTranscoder();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      transcoder.configure(fonts());
      transcoder.transcode(new TranscoderInput(SvgPage.document(page)), new TranscoderOutput(out));
    } catch (TranscoderException | ConfigurationException e) {
      throw new IllegalStateException("the page " + page.title() + " could not be printed", e);
    }
    return out.toByteArray();
  }

  /** The fonts of the program and no others; no kerning, as the widths were measured. */
  private static Configuration fonts() throws ConfigurationException {
    StringBuilder xml = new StringBuilder("<fop version=\"1.0\"><fonts>");
    for (Weight weight : Weight.values()) {
      URL font = Objects.requireNonNull(PdfPage.class.getResource(weight.resource()));
      xml.append("<font kerning=\"no\" embedding-mode=\"subset\" embed-url=\"")
          .append(font.toExternalForm().replace("&", "&amp;"))
          .append("\"><font-triplet name=\"Lato\" style=\"normal\" weight=\"")
          .append(weight.number())
          .append("\"/></font>");
    }
    xml.append("</fonts></fop>");
    return new DefaultConfigurationBuilder()
        .build(new ByteArrayInputStream(xml.toString().getBytes(StandardCharsets.UTF_8)));
  }
}
