package org.jointwright.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.joint.Source;
import org.jointwright.layout.boxout.Splice;
import org.jointwright.layout.piece.Ground;
import org.jointwright.layout.piece.Limits;
import org.jointwright.layout.piece.Loop;
import org.jointwright.layout.piece.Zones;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** Makes the ground of a slab: its outline, openings and box-outs as tagged loops. */
final class Grounds {
  private final List<Source> sources = new ArrayList<>();
  private final List<Edge> whole = new ArrayList<>();

  private final Bench bench;

  private Grounds(Bench bench) {
    this.bench = bench;
  }

  /** The ground of a slab on a bench, whole even where a box-out parts it. */
  static Ground of(Slab slab, List<BoxOut> boxes, Limits limits, Bench bench) {
    Grounds g = new Grounds(bench);
    return g.ground(slab, limits, g.loops(slab, boxes));
  }

  /** The same in parts, several where a box-out runs from edge to edge. */
  static List<Ground> parts(Slab slab, List<BoxOut> boxes, Limits limits, Bench bench) {
    Grounds g = new Grounds(bench);
    return Splice.parts(g.loops(slab, boxes)).stream()
        .map(part -> g.ground(slab, limits, part))
        .toList();
  }

  private Ground ground(Slab slab, Limits limits, List<Loop> loops) {
    return Ground.of(limits, sources, whole, loops, zones(slab), lead(slab));
  }

  private List<Loop> loops(Slab slab, List<BoxOut> boxes) {
    Ring outline = slab.outline().ring();
    List<Loop> loops = new ArrayList<>();
    Loop outer = loop(outline, i -> new Source.OnOutline(i));
    loops.add(fromLowest(outline.signedArea() < 0 ? reversed(outer) : outer));
    for (int k = 0; k < slab.openings().size(); k++) {
      int opening = k;
      Ring ring = slab.openings().get(k).outline().ring();
      Loop loop = loop(ring, i -> new Source.OnOpening(opening, i));
      loops.add(fromLowest(ring.signedArea() > 0 ? reversed(loop) : loop));
    }
    Set<Ring> done = new HashSet<>();
    for (BoxOut b : boxes) {
      Ring ring = b.outline().ring();
      if (!done.add(ring)) {
        // Objects that stand close together share it.
        continue;
      }
      Loop loop = loop(ring, i -> new Source.OnBoxOut(b.fixed(), i));
      Splice.cutOut(loops, ring.signedArea() > 0 ? reversed(loop) : loop);
    }
    return loops;
  }

  private Zones zones(Slab slab) {
    return new Zones(
        slab.keepClear().stream()
            .map(z -> new Ring(z.outline().ring().edges().stream().map(bench::in).toList()))
            .toList());
  }

  private static Optional<Point> lead(Slab slab) {
    return switch (slab.jointing().preference()) {
      case Preference.Overall overall -> Optional.empty();
      case Preference.LinedUpWith lined -> {
        List<Edge> edges = slab.outline().ring().edges();
        // A plan made by hand may name an edge that is not there: nothing leads then.
        yield lined.edge() >= edges.size()
            ? Optional.empty()
            : Optional.of(edges.get(lined.edge()))
                .map(e -> e.end().minus(e.start()))
                .filter(v -> v.norm() > 0)
                .map(Point::unit);
      }
    };
  }

  private Loop loop(Ring ring, java.util.function.IntFunction<Source> source) {
    List<Integer> tags = new ArrayList<>();
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < ring.edges().size(); i++) {
      if (ring.edges().get(i).length() > 0) {
        sources.add(source.apply(i));
        tags.add(-sources.size());
        Edge edge = bench.in(ring.edges().get(i));
        edges.add(edge);
        whole.add(edge);
      }
    }
    return new Loop(edges, tags);
  }

  /** The loop begun at its lowest vertex, so that where the plan begins it does not matter. */
  private static Loop fromLowest(Loop loop) {
    int first = 0;
    for (int i = 1; i < loop.size(); i++) {
      Point p = loop.edge(i).start();
      Point best = loop.edge(first).start();
      if (p.y() < best.y() || (p.y() == best.y() && p.x() < best.x())) {
        first = i;
      }
    }
    List<Edge> edges = new ArrayList<>();
    List<Integer> tags = new ArrayList<>();
    for (int i = 0; i < loop.size(); i++) {
      edges.add(loop.edge(first + i));
      tags.add(loop.tag(first + i));
    }
    return new Loop(edges, tags);
  }

  private static Loop reversed(Loop loop) {
    return new Loop(
        loop.edges().reversed().stream().map(Edge::reversed).toList(), loop.tags().reversed());
  }
}
