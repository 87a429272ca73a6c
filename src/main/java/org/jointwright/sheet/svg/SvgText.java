package org.jointwright.sheet.svg;

/**
 * The text of an XML document as it grows, a line for each element. Names of elements and
 * attributes are the program's own; only values and texts are escaped.
 */
final class SvgText {
  private final StringBuilder out =
      new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");

  /** An element that others stand in; attributes are names and values by turns. */
  void open(String name, String... attributes) {
    start(name, attributes);
    out.append(">\n");
  }

  void close(String name) {
    out.append("</").append(name).append(">\n");
  }

  void empty(String name, String... attributes) {
    start(name, attributes);
    end();
  }

  /** An element with nothing in it but a text. */
  void text(String name, String text) {
    start(name);
    content();
    said(text);
    ended(name);
  }

  /** The beginning of an element: {@link #attributes} may follow, then an end. */
  void start(String name, String... attributes) {
    out.append('<').append(name);
    attributes(attributes);
  }

  void attributes(String... attributes) {
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"");
      escape(attributes[i + 1]);
      out.append('"');
    }
  }

  /** Ends an element that has nothing in it. */
  void end() {
    out.append("/>\n");
  }

  /** Ends the attributes of an element that has a text in it. */
  void content() {
    out.append('>');
  }

  void said(String text) {
    escape(text);
  }

  /** A part of a text that has an attribute of its own. */
  void span(String attribute, String value, String text) {
    start("tspan", attribute, value);
    content();
    said(text);
    out.append("</tspan>");
  }

  void ended(String name) {
    close(name);
  }

  private void escape(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        default -> out.append(c);
      }
    }
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
