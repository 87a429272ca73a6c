package org.jointwright.layout.piece;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.joint.Source;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Uncut slabs for tests: panels at most 10 ft long, 1.5 times as long as wide, 2 ft wide. */
public final class Drafts {
  private Drafts() {}

  /** A slab of straight edges through x, y, x, y ... inches, counter-clockwise. */
  public static Draft of(double... xy) {
    return of(ring(xy));
  }

  /**
   * An upright slab from 0, 0 with an upright opening.
   *
   * @param width of the slab, inches
   * @param height of the slab, inches
   * @param x left of the opening
   * @param y below the opening
   * @param wide width of the opening
   * @param high height of the opening
   */
  public static Draft pierced(
      double width, double height, double x, double y, double wide, double high) {
    List<Edge> outer = ring(0, 0, width, 0, width, height, 0, height);
    List<Edge> inner = ring(x, y, x, y + high, x + wide, y + high, x + wide, y);
    List<Edge> edges = new ArrayList<>(outer);
    edges.addAll(inner);
    List<Source> sources = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      sources.add(new Source.OnOutline(i));
    }
    for (int i = 0; i < 4; i++) {
      sources.add(new Source.OnOpening(0, i));
    }
    List<Loop> loops =
        List.of(new Loop(outer, List.of(-1, -2, -3, -4)), new Loop(inner, List.of(-5, -6, -7, -8)));
    return Draft.of(Ground.of(new Limits(120, 1.5, 24), sources, edges, loops));
  }

  private static List<Edge> ring(double... xy) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      int next = (i + 2) % xy.length;
      edges.add(new Segment(new Point(xy[i], xy[i + 1]), new Point(xy[next], xy[next + 1])));
    }
    return edges;
  }

  /** A slab of those edges, counter-clockwise. */
  public static Draft of(List<Edge> edges) {
    List<Source> sources = new ArrayList<>();
    List<Integer> tags = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      sources.add(new Source.OnOutline(i));
      tags.add(-1 - i);
    }
    Limits limits = new Limits(120, 1.5, 24);
    return Draft.of(Ground.of(limits, sources, edges, List.of(new Loop(edges, tags))));
  }
}
