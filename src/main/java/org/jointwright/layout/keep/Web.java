package org.jointwright.layout.keep;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Carriers;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jspecify.annotations.Nullable;

/** Puts joints that run on from one to the next together, and tells who meets whom. */
final class Web {
  /** The sine up to which two joints run on along one line. */
  private static final double IN_LINE = 3e-4;

  /** What is no farther from a line stands on it, inches. */
  private static final double ON = 0.05;

  private record End(Track track, boolean last) {
    Node node() {
      return track.end(last);
    }

    /** The direction in which the joint would go on. */
    Point onward() {
      Edge e = track.edge();
      return last ? e.direction(1) : e.direction(0).times(-1);
    }

    End other() {
      return new End(track, !last);
    }
  }

  private final Map<Node, List<End>> ends = new HashMap<>();
  private final List<Strand> strands = new ArrayList<>();

  private Web() {}

  /** The strands of those joints. */
  static List<Strand> of(List<Track> tracks, List<Node> nodes) {
    Web web = new Web();
    for (Track t : tracks) {
      for (boolean last : new boolean[] {false, true}) {
        web.ends.computeIfAbsent(t.end(last), k -> new ArrayList<>()).add(new End(t, last));
      }
    }
    BitSet done = new BitSet();
    for (Track t : tracks) {
      if (!done.get(t.number())) {
        done.set(t.number());
        web.follow(t, done);
      }
    }
    web.tees(nodes);
    return web.strands;
  }

  private void follow(Track first, BitSet done) {
    List<Node> nodes = new ArrayList<>(List.of(first.start(), first.end()));
    List<Track> chain = new ArrayList<>(List.of(first));
    for (boolean last : new boolean[] {true, false}) {
      End at = new End(first, last);
      for (End next = next(at); next != null && !done.get(next.track().number()); next = next(at)) {
        done.set(next.track().number());
        chain.add(next.track());
        at = next.other();
        if (last) {
          nodes.addLast(at.node());
        } else {
          nodes.addFirst(at.node());
        }
      }
    }
    Carrier carrier = carrier(first, nodes);
    if (nodes.stream().allMatch(n -> carrier.distance(n.before()) <= ON)) {
      strands.add(new Strand(carrier, nodes, chain));
      return;
    }
    for (Track t : chain) {
      List<Node> own = List.of(t.start(), t.end());
      strands.add(new Strand(Carriers.of(t.edge()), own, List.of(t)));
    }
  }

  private static Carrier carrier(Track first, List<Node> nodes) {
    return first.edge() instanceof Arc
        ? Carriers.of(first.edge())
        : Carrier.Line.through(nodes.getFirst().before(), nodes.getLast().before());
  }

  /** The only joint that runs on beyond an end, entered at that end; none at the slab's edge. */
  private @Nullable End next(End from) {
    if (from.node().isOnRim()) {
      return null;
    }
    End found = null;
    for (End e : ends.getOrDefault(from.node(), List.of())) {
      if (e.track().number() != from.track().number() && runsOn(from, e)) {
        if (found != null) {
          return null;
        }
        found = e;
      }
    }
    return found;
  }

  private static boolean runsOn(End a, End b) {
    Point u = a.onward();
    Point v = b.onward();
    if (u.dot(v) > 0 || Math.abs(u.cross(v)) > IN_LINE) {
      return false;
    }
    Carrier one = Carriers.of(a.track().edge());
    Carrier two = Carriers.of(b.track().edge());
    return one instanceof Carrier.Circle c
        ? two instanceof Carrier.Circle d
            && c.centre().distance(d.centre()) <= ON
            && Math.abs(c.radius() - d.radius()) <= ON
        : !(two instanceof Carrier.Circle);
  }

  /** Finds on which strands' sides others end. */
  private void tees(List<Node> nodes) {
    List<Reach> reaches = new ArrayList<>();
    strands.forEach(s -> s.tracks().forEach(t -> reaches.add(new Reach(s, t.edge()))));
    for (Node n : nodes) {
      if (n.isOnRim()) {
        continue;
      }
      for (Reach r : reaches) {
        Strand s = r.strand();
        if (r.holds(n.before()) && !n.ending().contains(s) && !n.passing().contains(s)) {
          n.passing().add(s);
          s.meetOnSide(n);
        }
      }
    }
  }

  /** A joint of a strand, with the box that holds what stands on it: many places are asked. */
  private record Reach(Strand strand, Edge edge, Box box) {
    Reach(Strand strand, Edge edge) {
      this(strand, edge, edge.box().grown(ON));
    }

    boolean holds(Point p) {
      return box.holds(p) && edge.distance(p) <= ON;
    }
  }
}
