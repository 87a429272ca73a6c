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
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      edges.add(new Segment(points.get(i), points.get((i + 1) % points.size())));
    }
    return of(edges);
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
