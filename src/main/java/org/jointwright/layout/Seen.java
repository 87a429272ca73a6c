package org.jointwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jointwright.layout.search.Sights;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** What people see at the edges of a slab, as places on them that its joints like to meet. */
final class Seen {
  /** A given joint that stops this near to an edge meets it: filler may lie between, inches. */
  private static final double REACHES = 3;

  /** So near to a corner of its edge nothing can be met, inches: a joint there cuts a sliver. */
  private static final double FROM_CORNER = 12;

  /** Places this near to each other are one, inches. */
  private static final double SAME = 1;

  private final List<Point> places = new ArrayList<>();

  private Seen() {}

  /** The places on the edges of a slab, on its bench. */
  static Sights from(Plan plan, Slab slab, Bench bench) {
    Seen seen = new Seen();
    seen.features(slab.outline().ring().edges(), slab.edges());
    for (Opening o : slab.openings()) {
      seen.features(o.outline().ring().edges(), o.edges());
    }
    for (GivenJoint g : plan.given()) {
      seen.given(g, slab);
    }
    return new Sights(seen.places.stream().map(bench::in).toList());
  }

  private void features(List<Edge> edges, Map<Integer, EdgeSetting> settings) {
    settings.forEach(
        (i, setting) -> {
          for (Feature f : setting.features()) {
            addAlong(edges.get(i), f.from());
            addAlong(edges.get(i), f.to());
          }
        });
  }

  private void addAlong(Edge edge, double distance) {
    if (distance <= edge.length()) {
      add(edge, edge.at(distance / edge.length()));
    }
  }

  private void given(GivenJoint joint, Slab slab) {
    List<Edge> sides = new ArrayList<>(slab.outline().ring().edges());
    slab.openings().forEach(o -> sides.addAll(o.outline().ring().edges()));
    for (Edge side : sides) {
      for (Point end : List.of(joint.path().start(), joint.path().end())) {
        if (side.distance(end) <= REACHES) {
          add(side, side.at(side.nearest(end)));
        }
      }
      for (Edge e : joint.path().edges()) {
        Crossing.of(side, e).forEach(c -> add(side, c.at()));
      }
    }
  }

  private void add(Edge edge, Point at) {
    boolean nearCorner =
        edge.start().distance(at) < FROM_CORNER || edge.end().distance(at) < FROM_CORNER;
    if (!nearCorner && places.stream().noneMatch(p -> p.distance(at) <= SAME)) {
      places.add(at);
    }
  }
}
