package org.jointwright.sheet.svg;

import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jointwright.sheet.page.NoPlanInsideException;
import org.jointwright.sheet.page.NoPlanInsideException.Why;
import org.jointwright.sheet.page.Origin;
import org.jointwright.sheet.page.PlanInside;

/** Finds the plan in the SVG of a sheet. */
public final class PlanInSvg {
  private static final String PLACE = "metadata." + Metadata.PLAN;

  /** The tag of a drawing, with or without a prefix. */
  private static final Pattern DRAWING = Pattern.compile("<([\\w.-]+:)?svg\\b");

  /** Within so many bytes a drawing has said that it is one. */
  private static final int BEGIN = 8192;

  private PlanInSvg() {}

  /**
   * Whether a file can be an SVG, by how it begins: with a tag, where a plan has a bracket, and
   * soon the one of a drawing. A page of the web begins with a tag, too.
   */
  public static boolean looksLikeOne(byte[] file) {
    int at = 0;
    boolean hasMark = file.length > 3 && file[0] == (byte) 0xef && file[1] == (byte) 0xbb;
    at += hasMark ? 3 : 0;
    while (at < file.length && Character.isWhitespace(file[at])) {
      at++;
    }
    int length = Math.min(file.length, BEGIN);
    String begin = new String(file, 0, length, StandardCharsets.ISO_8859_1);
    return at < file.length && file[at] == '<' && DRAWING.matcher(begin).find();
  }

  /** The plan in it. */
  public static PlanInside of(byte[] svg) throws NoPlanInsideException {
    XMLInputFactory factory = XMLInputFactory.newFactory();
    // A file from anywhere may name others: none of them is fetched.
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    Optional<PlanInside> found = Optional.empty();
    try {
      XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(text(svg)));
      while (reader.hasNext()) {
        if (reader.next() == XMLStreamConstants.START_ELEMENT && isPlan(reader)) {
          int line = reader.getLocation().getLineNumber();
          if (found.isPresent()) {
            throw new NoPlanInsideException(Why.SEVERAL, line);
          }
          String stamp = String.valueOf(reader.getAttributeValue(null, Metadata.STAMP));
          String plan = reader.getElementText();
          found = Optional.of(new PlanInside(plan, PLACE, line, stamp.equals(Origin.stamp(plan))));
        }
      }
    } catch (XMLStreamException e) {
      int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNumber());
      throw new NoPlanInsideException(Why.BROKEN, line);
    }
    return found.orElseThrow(() -> new NoPlanInsideException(Why.NONE, 0));
  }

  /** Decoded before it is parsed: the parser prints its own complaint of bytes that are no text. */
  private static String text(byte[] svg) throws NoPlanInsideException {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(svg)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw new NoPlanInsideException(Why.BROKEN, 0);
    }
  }

  private static boolean isPlan(XMLStreamReader reader) {
    return Metadata.PLAN.equals(reader.getLocalName())
        && Metadata.PLAN_SPACE.equals(reader.getNamespaceURI());
  }
}
