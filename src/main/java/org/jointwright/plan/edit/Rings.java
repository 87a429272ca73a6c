package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import java.util.function.UnaryOperator;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Jointing;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** Changes of one ring of a slab, be it the outline or an opening. */
final class Rings {
  /** A ring and what its edges are against. */
  record Edged(Outline outline, Map<Integer, EdgeSetting> edges) {}

  private Rings() {}

  static Slab slab(Plan plan, String id) {
    return plan.slab(id).orElseThrow(() -> new IllegalArgumentException("no slab is named " + id));
  }

  static Plan change(Plan plan, Ref ref, UnaryOperator<Outline> change) {
    return edit(
        plan,
        ref,
        e -> {
          Outline changed = change.apply(e.outline);
          return new Edged(changed, EdgesAfter.fitted(changed, e.edges));
        });
  }

  static Plan set(Plan plan, Ref ref, EdgeSetting setting) {
    return changeSetting(plan, ref, s -> setting);
  }

  static Plan changeSetting(Plan plan, Ref ref, UnaryOperator<EdgeSetting> change) {
    return edit(
        plan,
        ref,
        e -> {
          Map<Integer, EdgeSetting> edges = new TreeMap<>(e.edges);
          EdgeSetting setting = change.apply(edges.getOrDefault(ref.index(), EdgeSetting.OPEN));
          if (setting.equals(EdgeSetting.OPEN)) {
            edges.remove(ref.index());
          } else {
            edges.put(ref.index(), setting);
          }
          return new Edged(e.outline, EdgesAfter.fitted(e.outline, edges));
        });
  }

  static Plan inserted(Plan plan, Ref ref, Vertex vertex) {
    return edit(
        plan,
        ref,
        e -> {
          List<Vertex> vertices = new ArrayList<>(e.outline.vertices());
          Edge edge = e.outline.ring().edges().get(ref.index());
          Vertex first = vertices.get(ref.index());
          Vertex added = vertex;
          if (edge instanceof Arc && vertex.via().isEmpty()) {
            // Both parts of a bow stay bowed.
            double at = edge.nearest(vertex.at());
            vertices.set(ref.index(), first.moved(first.at(), Optional.of(edge.at(at / 2))));
            added = vertex.moved(vertex.at(), Optional.of(edge.at((1 + at) / 2)));
          }
          vertices.add(ref.index() + 1, added);
          Outline now = new Outline(vertices);
          Map<Integer, EdgeSetting> edges =
              EdgesAfter.split(e.outline, e.edges, ref.index(), vertex.at());
          return new Edged(now, EdgesAfter.fitted(now, edges));
        },
        i -> i <= ref.index() ? i : i + 1);
  }

  static Plan removed(Plan plan, Ref ref) {
    return edit(
        plan,
        ref,
        e -> {
          List<Vertex> vertices = new ArrayList<>(e.outline.vertices());
          int n = vertices.size();
          if (n <= 3) {
            throw new IllegalArgumentException("an outline of " + n + " corners keeps them all");
          }
          int before = (ref.index() + n - 1) % n;
          Vertex last = vertices.get(before);
          vertices.set(before, last.moved(last.at(), Optional.empty()));
          vertices.remove(ref.index());
          Outline now = new Outline(vertices);
          int joined = before < ref.index() ? before : before - 1;
          Map<Integer, EdgeSetting> edges =
              EdgesAfter.joined(e.outline, e.edges, ref.index(), now.ring().edges().get(joined));
          return new Edged(now, EdgesAfter.fitted(now, edges));
        },
        i -> numberWithout(plan, ref, i));
  }

  /** The number of edge {@code i} once a corner is gone; its own edge is one with that before. */
  private static int numberWithout(Plan plan, Ref ref, int i) {
    int n = slab(plan, ref.slab()).outline().vertices().size();
    int kept = i == ref.index() ? (i + n - 1) % n : i;
    return kept < ref.index() ? kept : kept - 1;
  }

  /** A vertex moved; the arcs at it are carried along so that they keep their shape. */
  static Outline moved(Outline outline, int index, Point to) {
    List<Vertex> vertices = new ArrayList<>(outline.vertices());
    int n = vertices.size();
    int before = (index + n - 1) % n;
    Vertex v = vertices.get(index);
    Point next = vertices.get((index + 1) % n).at();
    Point previous = vertices.get(before).at();
    vertices.set(index, v.moved(to, v.via().map(m -> carried(m, v.at(), next, to, next))));
    Vertex p = vertices.get(before);
    vertices.set(
        before, p.moved(p.at(), p.via().map(m -> carried(m, previous, v.at(), previous, to))));
    return new Outline(vertices);
  }

  static Outline bent(Outline outline, int index, Optional<Point> via) {
    List<Vertex> vertices = new ArrayList<>(outline.vertices());
    Vertex v = vertices.get(index);
    vertices.set(index, v.moved(v.at(), via));
    return new Outline(vertices);
  }

  /** A point beside the chord a-b, turned and scaled to the chord c-d. */
  private static Point carried(Point m, Point a, Point b, Point c, Point d) {
    Point old = b.minus(a);
    Point now = d.minus(c);
    double n = old.dot(old);
    double along = m.minus(a).dot(old) / n;
    double off = old.cross(m.minus(a)) / n;
    return c.plus(now.times(along)).plus(now.left().times(off));
  }

  /** An edit that numbers the edges of the ring anew. */
  static Plan edit(Plan plan, Ref ref, UnaryOperator<Edged> change, IntUnaryOperator number) {
    Plan changed = edit(plan, ref, change);
    return ref.ring() != Ref.OUTLINE
        ? changed
        : changed.withSlab(ref.slab(), s -> s.withJointing(renumbered(s.jointing(), number)));
  }

  private static Jointing renumbered(Jointing jointing, IntUnaryOperator number) {
    return switch (jointing.preference()) {
      case Preference.Overall overall -> jointing;
      case Preference.LinedUpWith lined ->
          jointing.withPreference(
              new Preference.LinedUpWith(number.applyAsInt(lined.edge()), lined.kept()));
    };
  }

  private static Plan edit(Plan plan, Ref ref, UnaryOperator<Edged> change) {
    return plan.withSlab(
        ref.slab(),
        s -> {
          if (ref.ring() == Ref.OUTLINE) {
            Edged e = change.apply(checked(new Edged(s.outline(), s.edges()), ref));
            return s.withOutline(e.outline).withEdges(e.edges);
          }
          List<Opening> openings = new ArrayList<>(s.openings());
          Opening o = openings.get(ref.ring());
          Edged e = change.apply(checked(new Edged(o.outline(), o.edges()), ref));
          openings.set(ref.ring(), new Opening(e.outline, e.edges, o.kept()));
          return s.withOpenings(openings);
        });
  }

  private static Edged checked(Edged edged, Ref ref) {
    if (ref.index() < 0 || ref.index() >= edged.outline.vertices().size()) {
      throw new IllegalArgumentException("no corner has the number " + ref.index());
    }
    return edged;
  }
}
