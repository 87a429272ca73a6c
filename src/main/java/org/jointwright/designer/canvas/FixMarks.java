package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Sight;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.fix.Fix;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;

/**
 * What a fix would change, while the hand rests on it: dashed what comes, dotted what goes. The
 * plan itself stays as it is.
 */
final class FixMarks {
  private static final List<Double> DASHES = List.of(9.0, 5.0);
  private static final List<Double> DOTS = List.of(2.0, 4.0);

  private final View view;
  private final List<Mark> gone = new ArrayList<>();
  private final List<Mark> come = new ArrayList<>();

  private FixMarks(View view) {
    this.view = view;
  }

  static List<Mark> of(Desk desk) {
    FixMarks marks = new FixMarks(desk.viewport().view());
    looked(desk).ifPresent(f -> marks.add(desk.plan(), f.edit().applyTo(desk.plan())));
    List<Mark> all = new ArrayList<>(marks.gone);
    all.addAll(marks.come);
    return all;
  }

  /** The fix that the hand rests on. */
  private static Optional<Fix> looked(Desk desk) {
    Optional<Sight.Glance> glance = desk.sight().glance().filter(g -> g.fix().isPresent());
    return glance
        .flatMap(g -> desk.laying().offerFor(g.finding()))
        .filter(o -> glance.get().fix().getAsInt() < o.fixes().size())
        .map(o -> o.fixes().get(glance.get().fix().getAsInt()));
  }

  private void add(Plan now, Plan after) {
    for (Slab then : after.slabs()) {
      now.slab(then.id())
          .ifPresentOrElse(s -> add(s, then), () -> comes(round(then.outline()), 2.6));
    }
  }

  private void add(Slab now, Slab then) {
    if (now.equals(then)) {
      return;
    }
    for (Joint j : now.joints()) {
      if (then.joints().stream().noneMatch(t -> t.path().equals(j.path()))) {
        goes(j.path(), j.kind() == JointKind.CONTRACTION);
      }
    }
    for (Joint j : then.joints()) {
      if (now.joints().stream().noneMatch(n -> isSame(n, j))) {
        comes(j.path(), j.kind() == JointKind.CONTRACTION ? 2.6 : 5);
      }
    }
    for (BoxOut b : now.boxOuts()) {
      if (!then.boxOuts().contains(b)) {
        goes(round(b.outline()), false);
      }
    }
    for (BoxOut b : then.boxOuts()) {
      if (!now.boxOuts().contains(b)) {
        comes(round(b.outline()), 2.6);
      }
    }
    List<Edge> edges = then.outline().ring().edges();
    if (!now.outline().equals(then.outline())) {
      comes(round(then.outline()), 2.6);
    }
    then.openings().stream()
        .filter(o -> !now.openings().contains(o))
        .forEach(o -> comes(round(o.outline()), 2.6));
    for (int i = 0; i < edges.size(); i++) {
      if (!now.edge(i).equals(then.edge(i))) {
        comes(Path.of(edges.get(i)), 5);
      }
    }
  }

  /** Whether nothing is to be seen of what differs. */
  private static boolean isSame(Joint now, Joint then) {
    return now.path().equals(then.path())
        && now.kind() == then.kind()
        && now.depth().equals(then.depth());
  }

  private static Path round(Outline outline) {
    return new Path(outline.ring().edges());
  }

  /** A joint amid the slab is wiped off; along an edge the edge stays. */
  private void goes(Path path, boolean isAmid) {
    if (isAmid) {
      gone.add(Mark.Line.of(view.on(path), 3.4, Role.PANEL));
    }
    gone.add(new Mark.Line(view.on(path), 1.6, DOTS, Role.QUIET_TEXT));
  }

  private void comes(Path path, double width) {
    come.add(new Mark.Line(view.on(path), width, DASHES, Role.SELECTED));
  }
}
