package org.jointwright.sheet.page;

import java.util.List;
import org.jointwright.drawing.Mark;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/** Marks made larger, type with them; lines keep their widths, which mean something. */
public final class Enlarged {
  private final double times;

  private Enlarged(double times) {
    this.times = times;
  }

  /** Marks so many times as large, from the paper’s upper left corner. */
  public static List<Mark> of(List<Mark> marks, double times) {
    Enlarged enlarged = new Enlarged(times);
    return times == 1 ? marks : marks.stream().map(enlarged::mark).toList();
  }

  private Mark mark(Mark mark) {
    return switch (mark) {
      case Mark.Line l ->
          new Mark.Line(
              new Path(edges(l.path().edges())),
              l.width(),
              l.dashes().stream().map(d -> d * times).toList(),
              l.role());
      case Mark.Area a ->
          new Mark.Area(a.rings().stream().map(r -> new Ring(edges(r.edges()))).toList(), a.role());
      case Mark.Words w ->
          new Mark.Words(
              w.at().times(times),
              w.text(),
              w.size() * times,
              w.weight(),
              w.anchor(),
              w.angle(),
              w.fraction(),
              w.role());
      case Mark.Group g ->
          new Mark.Group(g.name(), g.title(), g.marks().stream().map(this::mark).toList());
    };
  }

  private List<Edge> edges(List<Edge> edges) {
    return edges.stream().map(this::edge).toList();
  }

  private Edge edge(Edge edge) {
    Point start = edge.start().times(times);
    Point end = edge.end().times(times);
    return switch (edge) {
      case Segment s -> new Segment(start, end);
      case Arc a -> new Arc(start, end, a.centre().times(times), a.sweep());
    };
  }
}
