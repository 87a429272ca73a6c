package org.jointwright.sheet.svg;

import java.util.List;
import java.util.Locale;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/** The path data of SVG 1.1, section 8.3. */
final class PathData {
  private PathData() {}

  static String of(Path path) {
    return of(path.edges(), path.isClosed());
  }

  static String of(List<Ring> rings) {
    StringBuilder out = new StringBuilder();
    rings.forEach(r -> out.append(of(r.edges(), true)));
    return out.toString();
  }

  private static String of(List<Edge> edges, boolean closed) {
    StringBuilder out = new StringBuilder("M");
    out.append(number(edges.getFirst().start().x())).append(' ');
    out.append(number(edges.getFirst().start().y()));
    for (Edge e : edges) {
      switch (e) {
        case Segment s -> out.append('L');
        case Arc a -> {
          String r = number(a.radius());
          out.append('A').append(r).append(' ').append(r).append(" 0 ");
          out.append(Math.abs(a.sweep()) > Math.PI ? "1 " : "0 ");
          out.append(a.sweep() > 0 ? "1 " : "0 ");
        }
      }
      out.append(number(e.end().x())).append(' ').append(number(e.end().y()));
    }
    return out.append(closed ? "Z" : "").toString();
  }

  /** A number to 1/1000, without zeros at its end. */
  static String number(double value) {
    String text = String.format(Locale.ROOT, "%.3f", value);
    text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
    return text.equals("-0") ? "0" : text;
  }
}
