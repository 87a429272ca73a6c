package org.jointwright.layout;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.joint.Source;
import org.jointwright.layout.boxout.Splice;
import org.jointwright.layout.piece.Ground;
import org.jointwright.layout.piece.Limits;
import org.jointwright.layout.piece.Loop;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Ring;

/** Makes the ground of a slab: its outline, openings and box-outs as tagged loops. */
final class Grounds {
  private final List<Source> sources = new ArrayList<>();
  private final List<Edge> whole = new ArrayList<>();

  private Grounds() {}

  static Ground of(Slab slab, List<BoxOut> boxes, Limits limits) {
    Grounds g = new Grounds();
    Ring outline = slab.outline().ring();
    List<Loop> loops = new ArrayList<>();
    Loop outer = g.loop(outline, i -> new Source.OnOutline(i));
    loops.add(outline.signedArea() < 0 ? reversed(outer) : outer);
    for (int k = 0; k < slab.openings().size(); k++) {
      int opening = k;
      Ring ring = slab.openings().get(k).outline().ring();
      Loop loop = g.loop(ring, i -> new Source.OnOpening(opening, i));
      loops.add(ring.signedArea() > 0 ? reversed(loop) : loop);
    }
    for (BoxOut b : boxes) {
      Ring ring = b.outline().ring();
      Loop loop = g.loop(ring, i -> new Source.OnBoxOut(b.fixed(), i));
      Splice.cutOut(loops, ring.signedArea() > 0 ? reversed(loop) : loop);
    }
    return new Ground(limits, g.sources, g.whole, loops);
  }

  private Loop loop(Ring ring, java.util.function.IntFunction<Source> source) {
    List<Integer> tags = new ArrayList<>();
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < ring.edges().size(); i++) {
      if (ring.edges().get(i).length() > 0) {
        sources.add(source.apply(i));
        tags.add(-sources.size());
        edges.add(ring.edges().get(i));
        whole.add(ring.edges().get(i));
      }
    }
    return new Loop(edges, tags);
  }

  private static Loop reversed(Loop loop) {
    return new Loop(
        loop.edges().reversed().stream().map(Edge::reversed).toList(), loop.tags().reversed());
  }
}
