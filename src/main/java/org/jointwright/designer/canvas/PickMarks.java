package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Things;
import org.jointwright.drawing.JointMarks;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Pens;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** What is picked, and what is under the pointer: a line on its halo, square ends. */
final class PickMarks {
  private PickMarks() {}

  static List<Mark> picked(Plan plan, Pick pick, View view) {
    return of(plan, pick, view, true);
  }

  static List<Mark> pointed(Plan plan, Pick pick, View view) {
    return of(plan, pick, view, false);
  }

  private static List<Mark> of(Plan plan, Pick pick, View view, boolean picked) {
    if (pick instanceof Pick.Scaling s && s.to().isEmpty()) {
      return s.from().map(p -> corner(view.on(p), picked)).orElse(List.of());
    }
    if (pick instanceof Pick.AtCorner c) {
      return Picks.vertex(plan, c.corner()).map(p -> corner(view.on(p), picked)).orElse(List.of());
    }
    if (pick instanceof Pick.Several s) {
      return s.things().stream()
          .flatMap(t -> Things.line(plan, t).stream())
          .flatMap(p -> line(p, view, picked, false).stream())
          .toList();
    }
    List<Mark> marks = new ArrayList<>();
    path(plan, pick).ifPresent(p -> marks.addAll(line(p, view, picked, hasHandles(pick))));
    if (pick instanceof Pick.AtJoint at) {
      // The halo lies over the plan, and would leave half of the nailhead to be seen.
      Picks.joint(plan, at)
          .filter(Joint::locked)
          .map(j -> view.on(j.path().middle()))
          .ifPresent(p -> marks.addAll(JointMarks.nailhead(p, Pens.SCREEN)));
    }
    return marks;
  }

  /** The line that shows what is picked; empty for a corner, and where nothing is. */
  static Optional<Path> path(Plan plan, Pick pick) {
    return switch (pick) {
      case Pick.Nothing n -> Optional.empty();
      case Pick.AtCorner c -> Optional.empty();
      case Pick.Several s -> Optional.empty();
      case Pick.WholeSlab s -> plan.slab(s.slab()).map(Slab::outline).map(o -> round(o.ring()));
      case Pick.AtOpening o ->
          plan.slab(o.slab())
              .filter(s -> o.opening() < s.openings().size())
              .map(s -> round(s.openings().get(o.opening()).outline().ring()));
      case Pick.AtFixed f ->
          plan.fixedObject(f.id()).map(FixedObject::shape).map(s -> round(s.ring()));
      case Pick.AtEdge e -> Picks.edge(plan, e.edge()).map(Path::of);
      case Pick.AtJoint j -> Picks.joint(plan, j).map(Joint::path);
      case Pick.AtFeature f -> Picks.along(plan, f).map(Path::of);
      case Pick.AtZone z ->
          plan.slab(z.slab())
              .filter(s -> z.zone() < s.keepClear().size())
              .map(s -> round(s.keepClear().get(z.zone()).outline().ring()));
      case Pick.AtGiven g ->
          g.joint() < plan.given().size()
              ? Optional.of(plan.given().get(g.joint()).path())
              : Optional.empty();
      case Pick.AtPhoto p -> plan.photo().map(x -> round(x.ring()));
      case Pick.Scaling s -> s.from().flatMap(a -> s.to().map(b -> Path.straight(a, b)));
    };
  }

  private static Path round(Ring ring) {
    return new Path(ring.edges());
  }

  /** Whether what is picked shows squares at its ends: lines do, what runs round does not. */
  static boolean hasHandles(Pick pick) {
    return switch (pick) {
      case Pick.AtEdge e -> true;
      case Pick.AtJoint j -> true;
      case Pick.AtFeature f -> true;
      case Pick.AtGiven g -> true;
      case Pick.Scaling s -> true;
      case Pick.AtPhoto p -> false;
      case Pick.Nothing n -> false;
      case Pick.AtCorner c -> false;
      case Pick.Several s -> false;
      case Pick.WholeSlab s -> false;
      case Pick.AtOpening o -> false;
      case Pick.AtFixed f -> false;
      case Pick.AtZone z -> false;
    };
  }

  /** The handle in the middle of a side, by which it is bent. */
  static List<Mark> handle(Edge edge, View view) {
    Ring ring = Rings.circle(view.on(edge.at(0.5)), 6);
    return List.of(
        Mark.Area.of(ring, Role.ON_MUST), Mark.Line.of(new Path(ring.edges()), 2.4, Role.SELECTED));
  }

  /** A line on its halo. */
  static List<Mark> line(Path plan, View view, boolean picked, boolean ends) {
    Path path = view.on(plan);
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.Line.of(path, picked ? 11 : 9, picked ? Role.SELECTED_HALO : Role.POINTED_HALO));
    marks.add(Mark.Line.of(path, picked ? 3.4 : 2, picked ? Role.SELECTED : Role.POINTED));
    if (picked && ends) {
      marks.addAll(square(path.start(), Role.SELECTED));
      marks.addAll(square(path.end(), Role.SELECTED));
    }
    return marks;
  }

  private static List<Mark> corner(Point at, boolean picked) {
    if (picked) {
      Ring halo = Rings.circle(at, 12);
      List<Mark> marks = new ArrayList<>(List.of(Mark.Area.of(halo, Role.SELECTED_HALO)));
      marks.addAll(square(at, Role.SELECTED));
      return marks;
    }
    List<Mark> marks =
        new ArrayList<>(List.of(Mark.Area.of(Rings.circle(at, 11), Role.POINTED_HALO)));
    marks.addAll(square(at, Role.POINTED));
    return marks;
  }

  private static List<Mark> square(Point at, Role role) {
    Ring box = Rings.box(at.x() - 5.5, at.y() - 5.5, 11, 11);
    return List.of(Mark.Area.of(box, Role.ON_MUST), Mark.Line.of(new Path(box.edges()), 2.4, role));
  }
}
