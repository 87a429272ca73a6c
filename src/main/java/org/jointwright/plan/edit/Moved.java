package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Jointing;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Motion;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/**
 * Parts of a plan moved, turned or mirrored. Outlines stay counter-clockwise: mirrored, they are
 * run the other way from the same first corner, and what is known of their edges goes along.
 */
final class Moved {
  private Moved() {}

  static Plan slab(Plan plan, String id, Motion motion) {
    return plan.withSlab(id, s -> slab(s, motion))
        .withFixed(
            plan.fixed().stream().map(f -> f.slab().equals(id) ? fixed(f, motion) : f).toList());
  }

  static Slab slab(Slab s, Motion motion) {
    int n = s.outline().vertices().size();
    return s.withOutline(outline(s.outline(), motion))
        .withEdges(edges(s.outline(), s.edges(), motion))
        .withJointing(jointing(s.jointing(), n, motion))
        .withOpenings(s.openings().stream().map(o -> opening(o, motion)).toList())
        .withKeepClear(s.keepClear().stream().map(z -> zone(z, motion)).toList())
        .withLaid(
            s.joints().stream().map(j -> joint(j, motion)).toList(),
            s.boxOuts().stream()
                .map(b -> new BoxOut(b.fixed(), outline(b.outline(), motion), b.kept()))
                .toList());
  }

  static Opening opening(Opening o, Motion motion) {
    return new Opening(
        outline(o.outline(), motion), edges(o.outline(), o.edges(), motion), o.kept());
  }

  static FixedObject fixed(FixedObject f, Motion motion) {
    FixedShape shape =
        switch (f.shape()) {
          case FixedShape.Round r ->
              new FixedShape.Round(motion.of(r.at()), r.diameter(), r.kept());
          case FixedShape.Outlined o ->
              new FixedShape.Outlined(outline(o.outline(), motion), o.kept());
        };
    return new FixedObject(f.id(), f.slab(), f.kind(), shape, f.kept());
  }

  static Joint joint(Joint j, Motion motion) {
    return j.withPath(path(j.path(), motion));
  }

  static KeepClear zone(KeepClear z, Motion motion) {
    return new KeepClear(z.name(), outline(z.outline(), motion), z.kept());
  }

  static GivenJoint given(GivenJoint j, Motion motion) {
    return new GivenJoint(path(j.path(), motion), j.kept());
  }

  private static Path path(Path path, Motion motion) {
    return new Path(path.edges().stream().map(motion::of).toList());
  }

  private static Outline outline(Outline o, Motion motion) {
    List<Vertex> vertices = o.vertices();
    int n = vertices.size();
    List<Vertex> moved = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Vertex at = vertices.get(motion.isMirrored() ? (n - i) % n : i);
      Vertex leaving = vertices.get(motion.isMirrored() ? n - 1 - i : i);
      Point to = motion.of(at.at());
      moved.add(at.moved(to, leaving.via().map(motion::of)));
    }
    return new Outline(moved);
  }

  private static Map<Integer, EdgeSetting> edges(
      Outline before, Map<Integer, EdgeSetting> settings, Motion motion) {
    if (!motion.isMirrored()) {
      return settings;
    }
    List<Edge> edges = before.ring().edges();
    Map<Integer, EdgeSetting> turned = new TreeMap<>();
    settings.forEach(
        (i, s) ->
            turned.put(
                edges.size() - 1 - i,
                s.withFeatures(
                    s.features().stream().map(f -> f.turned(edges.get(i).length())).toList())));
    return turned;
  }

  private static Jointing jointing(Jointing jointing, int edges, Motion motion) {
    return motion.isMirrored() && jointing.preference() instanceof Preference.LinedUpWith lined
        ? jointing.withPreference(
            new Preference.LinedUpWith(edges - 1 - lined.edge(), lined.kept()))
        : jointing;
  }
}
