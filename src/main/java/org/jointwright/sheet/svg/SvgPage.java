package org.jointwright.sheet.svg;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Runs;
import org.jointwright.drawing.Typeface;
import org.jointwright.sheet.page.Page;

/** A page as an SVG 1.1 document, one user unit for each millimetre of paper. */
public final class SvgPage {
  private final Page page;
  private final SvgText out = new SvgText();
  private final Set<String> names = new HashSet<>();

  private SvgPage(Page page) {
    this.page = page;
    String width = PathData.number(page.paper().width());
    String height = PathData.number(page.paper().height());
    out.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "version",
        "1.1",
        "width",
        width + "mm",
        "height",
        height + "mm",
        "viewBox",
        "0 0 " + width + " " + height,
        "font-family",
        "Lato, sans-serif");
    told("title", page.title());
    told("desc", page.description());
    out.empty("rect", "width", width, "height", height, "fill", "#ffffff");
    paint(page.marks());
    out.close("svg");
  }

  /**
   * The page as the bytes of an SVG file.
   *
   * @throws IllegalArgumentException when the font has no glyph for a character of the page
   */
  public static byte[] bytes(Page page) {
    return new SvgPage(page).out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void told(String name, String text) {
    if (!text.isEmpty()) {
      out.text(name, text);
    }
  }

  private String colour(Role role) {
    return String.format(Locale.ROOT, "#%06x", page.ink().of(role));
  }

  private void paint(List<Mark> marks) {
    for (Mark mark : marks) {
      switch (mark) {
        case Mark.Line line -> line(line);
        case Mark.Area area -> area(area);
        case Mark.Words words -> words(words);
        case Mark.Group group -> group(group);
      }
    }
  }

  private void group(Mark.Group group) {
    if (group.marks().isEmpty()) {
      return;
    }
    String name = group.name().replaceAll("[^A-Za-z0-9_.-]", "-");
    if (!name.isEmpty() && Character.isLetter(name.charAt(0)) && names.add(name)) {
      out.open("g", "id", name);
    } else {
      out.open("g");
    }
    told("title", group.title());
    paint(group.marks());
    out.close("g");
  }

  private void line(Mark.Line line) {
    out.start("path", "d", PathData.of(line.path()), "fill", "none");
    out.attributes("stroke", colour(line.role()), "stroke-width", PathData.number(line.width()));
    if (!line.dashes().isEmpty()) {
      out.attributes(
          "stroke-dasharray",
          line.dashes().stream().map(PathData::number).collect(Collectors.joining(" ")));
    }
    out.end();
  }

  private void area(Mark.Area area) {
    out.start("path", "d", PathData.of(area.rings()), "fill", colour(area.role()));
    if (area.rings().size() > 1) {
      out.attributes("fill-rule", "evenodd");
    }
    out.end();
  }

  private void words(Mark.Words words) {
    requireGlyphs(words);
    String x = PathData.number(words.at().x());
    String y = PathData.number(words.at().y());
    out.start("text", "x", x, "y", y, "font-size", PathData.number(words.size()));
    out.attributes(
        "font-weight", String.valueOf(words.weight().number()), "fill", colour(words.role()));
    if (words.anchor() != Anchor.START) {
      out.attributes("text-anchor", words.anchor() == Anchor.END ? "end" : "middle");
    }
    if (words.angle() != 0) {
      out.attributes(
          "transform", "rotate(" + PathData.number(-words.angle()) + " " + x + " " + y + ")");
    }
    out.content();
    for (Runs.Run run : Runs.of(words.text())) {
      if (run.larger() && words.fraction() != 1) {
        out.span("font-size", PathData.number(words.size() * words.fraction()), run.text());
      } else {
        out.said(run.text());
      }
    }
    out.ended("text");
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
