package org.jointwright.check;

import java.util.function.UnaryOperator;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** A plan moved and turned as a whole. */
public record Moved(UnaryOperator<Point> by) {
  public static Moved turnedBy(double radians, Point then) {
    return new Moved(p -> p.turned(radians).plus(then));
  }

  public Plan plan(Plan plan) {
    return plan.withSlabs(plan.slabs().stream().map(this::slab).toList())
        .withFixed(plan.fixed().stream().map(this::fixed).toList());
  }

  private Slab slab(Slab slab) {
    return slab.withOutline(outline(slab.outline()))
        .withOpenings(
            slab.openings().stream()
                .map(o -> new Opening(outline(o.outline()), o.edges(), o.kept()))
                .toList())
        .withLaid(
            slab.joints().stream().map(this::joint).toList(),
            slab.boxOuts().stream()
                .map(b -> new BoxOut(b.fixed(), outline(b.outline()), b.kept()))
                .toList());
  }

  private Joint joint(Joint joint) {
    return joint.withPath(new Path(joint.path().edges().stream().map(this::edge).toList()));
  }

  private Edge edge(Edge edge) {
    return switch (edge) {
      case Segment s -> new Segment(by.apply(s.start()), by.apply(s.end()));
      case Arc a ->
          new Arc(by.apply(a.start()), by.apply(a.end()), by.apply(a.centre()), a.sweep());
    };
  }

  private Outline outline(Outline outline) {
    return new Outline(
        outline.vertices().stream()
            .map(v -> new Vertex(by.apply(v.at()), v.via().map(by), v.kept()))
            .toList());
  }

  private FixedObject fixed(FixedObject f) {
    FixedShape shape =
        switch (f.shape()) {
          case FixedShape.Round r -> new FixedShape.Round(by.apply(r.at()), r.diameter(), r.kept());
          case FixedShape.Outlined o -> new FixedShape.Outlined(outline(o.outline()), o.kept());
        };
    return new FixedObject(f.id(), f.slab(), f.kind(), shape, f.kept());
  }
}
