package org.jointwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;

/** Plans of straight-edged slabs drawn elsewhere, the other way about, or from another corner. */
final class Turned {
  private final UnaryOperator<Point> way;
  private final int first;

  private Turned(UnaryOperator<Point> way, int first) {
    this.way = way;
    this.first = first;
  }

  /** The plan a quarter turn round, counter-clockwise. */
  static Plan quarter(Plan plan) {
    return new Turned(p -> new Point(-p.y(), p.x()), 0).plan(plan);
  }

  /** The plan seen in a mirror that stands upright. */
  static Plan mirrored(Plan plan) {
    return new Turned(p -> new Point(-p.x(), p.y()), 0).plan(plan);
  }

  /** The plan shifted. */
  static Plan shifted(Plan plan, Point by) {
    return new Turned(p -> p.plus(by), 0).plan(plan);
  }

  /** The plan with its outlines drawn from another corner on. */
  static Plan begunAt(Plan plan, int corner) {
    return new Turned(p -> p, corner).plan(plan);
  }

  private Plan plan(Plan plan) {
    List<Slab> slabs = plan.slabs().stream().map(this::slab).toList();
    return plan.withSlabs(slabs).withFixed(plan.fixed().stream().map(this::object).toList());
  }

  private Slab slab(Slab slab) {
    List<Opening> openings =
        slab.openings().stream()
            .map(o -> new Opening(outline(o.outline()), o.edges(), o.kept()))
            .toList();
    return slab.withOutline(outline(slab.outline())).withOpenings(openings);
  }

  private FixedObject object(FixedObject f) {
    FixedShape shape =
        switch (f.shape()) {
          case FixedShape.Round r ->
              new FixedShape.Round(way.apply(r.at()), r.diameter(), r.kept());
          case FixedShape.Outlined o -> new FixedShape.Outlined(outline(o.outline()), o.kept());
        };
    return new FixedObject(f.id(), f.slab(), f.kind(), shape, f.kept());
  }

  private Outline outline(Outline outline) {
    List<Point> points = new ArrayList<>();
    int n = outline.vertices().size();
    for (int i = 0; i < n; i++) {
      points.add(way.apply(outline.vertices().get((i + first) % n).at()));
    }
    Outline drawn = Outline.of(points);
    return drawn.ring().signedArea() > 0 ? drawn : Outline.of(points.reversed());
  }
}
