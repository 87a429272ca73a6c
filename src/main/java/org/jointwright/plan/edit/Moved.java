package org.jointwright.plan.edit;

import org.jointwright.plan.BoxOut;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.Joint;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Parts of a plan moved by a vector. */
final class Moved {
  private Moved() {}

  static Plan slab(Plan plan, String id, Point by) {
    return plan.withSlab(id, s -> slab(s, by))
        .withFixed(plan.fixed().stream().map(f -> f.slab().equals(id) ? fixed(f, by) : f).toList());
  }

  private static Slab slab(Slab s, Point by) {
    return s.withOutline(outline(s.outline(), by))
        .withOpenings(
            s.openings().stream()
                .map(o -> new Opening(outline(o.outline(), by), o.edges(), o.kept()))
                .toList())
        .withKeepClear(s.keepClear().stream().map(z -> zone(z, by)).toList())
        .withLaid(
            s.joints().stream().map(j -> joint(j, by)).toList(),
            s.boxOuts().stream()
                .map(b -> new BoxOut(b.fixed(), outline(b.outline(), by), b.kept()))
                .toList());
  }

  static FixedObject fixed(FixedObject f, Point by) {
    FixedShape shape =
        switch (f.shape()) {
          case FixedShape.Round r -> new FixedShape.Round(r.at().plus(by), r.diameter(), r.kept());
          case FixedShape.Outlined o -> new FixedShape.Outlined(outline(o.outline(), by), o.kept());
        };
    return new FixedObject(f.id(), f.slab(), f.kind(), shape, f.kept());
  }

  static Joint joint(Joint j, Point by) {
    return j.withPath(path(j.path(), by));
  }

  static KeepClear zone(KeepClear z, Point by) {
    return new KeepClear(z.name(), outline(z.outline(), by), z.kept());
  }

  static GivenJoint given(GivenJoint j, Point by) {
    return new GivenJoint(path(j.path(), by), j.kept());
  }

  private static Path path(Path path, Point by) {
    return new Path(path.edges().stream().map(e -> edge(e, by)).toList());
  }

  private static Edge edge(Edge e, Point by) {
    return switch (e) {
      case Segment s -> new Segment(s.start().plus(by), s.end().plus(by));
      case Arc a -> new Arc(a.start().plus(by), a.end().plus(by), a.centre().plus(by), a.sweep());
    };
  }

  private static Outline outline(Outline o, Point by) {
    return new Outline(
        o.vertices().stream()
            .map(v -> v.moved(v.at().plus(by), v.via().map(m -> m.plus(by))))
            .toList());
  }
}
