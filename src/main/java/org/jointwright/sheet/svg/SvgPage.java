package org.jointwright.sheet.svg;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.dom.util.DOMUtilities;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Runs;
import org.jointwright.drawing.Typeface;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.SheetSet;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A page as an SVG document, one user unit for each millimetre of paper. */
public final class SvgPage {
  private static final String SVG = SVGDOMImplementation.SVG_NAMESPACE_URI;

  private final Page page;
  private final Document document;
  private final Set<String> names = new HashSet<>();

  private SvgPage(Page page, Optional<SheetSet> set) {
    this.page = page;
    document = SVGDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
    Element root = document.getDocumentElement();
    double width = page.paper().width();
    double height = page.paper().height();
    root.setAttribute("version", "1.1");
    root.setAttribute("width", PathData.number(width) + "mm");
    root.setAttribute("height", PathData.number(height) + "mm");
    root.setAttribute("viewBox", "0 0 " + PathData.number(width) + " " + PathData.number(height));
    root.setAttribute("font-family", "Lato, sans-serif");
    // Texts were measured by the widths of their letters alone; with their length they are the
    // same in every renderer.
    root.setAttribute("text-rendering", "geometricPrecision");
    root.setAttribute("style", "font-kerning:none;font-variant-ligatures:none");
    told(root, "title", page.title());
    told(root, "desc", page.description());
    set.ifPresent(s -> s.origin().ifPresent(o -> Metadata.add(add(root, "metadata"), s, page, o)));
    Element paper = add(root, "rect");
    paper.setAttribute("width", PathData.number(width));
    paper.setAttribute("height", PathData.number(height));
    paper.setAttribute("fill", "#ffffff");
    paint(root, page.marks());
  }

  /**
   * The page as the bytes of an SVG file.
   *
   * @throws IllegalArgumentException when the font has no glyph for a character of the page
   */
  public static byte[] bytes(Page page) {
    return bytes(page, Optional.empty());
  }

  /**
   * A page of a set as the bytes of an SVG file, with what the set tells of itself.
   *
   * @param page its number, from 0
   * @throws IllegalArgumentException when the font has no glyph for a character of the page
   */
  public static byte[] bytes(SheetSet set, int page) {
    return bytes(set.pages().get(page), Optional.of(set));
  }

  private static byte[] bytes(Page page, Optional<SheetSet> set) {
    StringWriter out = new StringWriter();
    out.write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    try {
      DOMUtilities.writeDocument(new SvgPage(page, set).document, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return (out + "\n").getBytes(StandardCharsets.UTF_8);
  }

  private String colour(Role role) {
    return String.format(Locale.ROOT, "#%06x", page.ink().of(role));
  }

  private Element add(Element parent, String name) {
    Element e = document.createElementNS(SVG, name);
    parent.appendChild(document.createTextNode("\n"));
    parent.appendChild(e);
    return e;
  }

  private void told(Element parent, String name, String text) {
    if (!text.isEmpty()) {
      add(parent, name).appendChild(document.createTextNode(text));
    }
  }

  private void paint(Element parent, List<Mark> marks) {
    for (Mark mark : marks) {
      switch (mark) {
        case Mark.Line line -> line(parent, line);
        case Mark.Area area -> area(parent, area);
        case Mark.Words words -> words(parent, words);
        case Mark.Group group -> group(parent, group);
      }
    }
  }

  private void group(Element parent, Mark.Group group) {
    if (group.marks().isEmpty()) {
      return;
    }
    Element g = add(parent, "g");
    String name = group.name().replaceAll("[^A-Za-z0-9_.-]", "-");
    if (!name.isEmpty() && Character.isLetter(name.charAt(0)) && names.add(name)) {
      g.setAttribute("id", name);
    }
    told(g, "title", group.title());
    paint(g, group.marks());
  }

  private void line(Element parent, Mark.Line line) {
    Element path = add(parent, "path");
    path.setAttribute("d", PathData.of(line.path()));
    path.setAttribute("fill", "none");
    path.setAttribute("stroke", colour(line.role()));
    path.setAttribute("stroke-width", PathData.number(line.width()));
    if (!line.dashes().isEmpty()) {
      path.setAttribute(
          "stroke-dasharray",
          line.dashes().stream().map(PathData::number).collect(Collectors.joining(" ")));
    }
  }

  private void area(Element parent, Mark.Area area) {
    Element path = add(parent, "path");
    path.setAttribute("d", PathData.of(area.rings()));
    path.setAttribute("fill", colour(area.role()));
    if (area.rings().size() > 1) {
      path.setAttribute("fill-rule", "evenodd");
    }
  }

  private void words(Element parent, Mark.Words words) {
    requireGlyphs(words);
    Element text = add(parent, "text");
    String x = PathData.number(words.at().x());
    String y = PathData.number(words.at().y());
    text.setAttribute("x", x);
    text.setAttribute("y", y);
    text.setAttribute("font-size", PathData.number(words.size()));
    text.setAttribute("font-weight", String.valueOf(words.weight().number()));
    text.setAttribute("fill", colour(words.role()));
    if (words.anchor() != Anchor.START) {
      text.setAttribute("text-anchor", words.anchor() == Anchor.END ? "end" : "middle");
    }
    if (words.text().length() > 1) {
      text.setAttribute("textLength", PathData.number(Runs.width(words)));
    }
    if (words.angle() != 0) {
      text.setAttribute(
          "transform", "rotate(" + PathData.number(-words.angle()) + " " + x + " " + y + ")");
    }
    for (Runs.Run run : Runs.of(words.text())) {
      if (run.larger() && words.fraction() != 1) {
        Element span = document.createElementNS(SVG, "tspan");
        span.setAttribute("font-size", PathData.number(words.size() * words.fraction()));
        span.appendChild(document.createTextNode(run.text()));
        text.appendChild(span);
      } else {
        text.appendChild(document.createTextNode(run.text()));
      }
    }
  }

  private static void requireGlyphs(Mark.Words words) {
    Typeface face = Typeface.of(words.weight());
    words
        .text()
        .codePoints()
        .filter(c -> !face.has(c))
        .findFirst()
        .ifPresent(
            c -> {
              throw new IllegalArgumentException(
                  String.format(
                      Locale.ROOT, "the font has no glyph for U+%04X in: %s", c, words.text()));
            });
  }
}
