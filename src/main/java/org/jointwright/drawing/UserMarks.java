package org.jointwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * What the user told of the ground: features along edges, joints that are there already beside the
 * slabs, zones to be kept clear. All of it quiet: it explains the joints and is not cut.
 */
public final class UserMarks {
  /** How far beside the slabs these are drawn, in hatchings of filler; farther they say nothing. */
  private static final double REACH = 8;

  /** Into how many pieces the reach is divided where a line is followed to it. */
  private static final int STEPS = 32;

  /** A line of more steps is followed in coarser ones. */
  private static final double MOST_STEPS = 4000;

  private UserMarks() {}

  /** A bar along the inside of the edge from one end of each feature to the other. */
  static List<Mark> features(Plan plan, View view, Pens pens) {
    List<Mark> marks = new ArrayList<>();
    for (Slab slab : plan.slabs()) {
      List<Edge> edges = slab.outline().ring().edges();
      // Seen with y down, the concrete of an outline lies on the right, of an opening on the left.
      slab.edges().forEach((i, s) -> bars(edges.get(i), s, -pens.fillerLeast(), view, pens, marks));
      for (Opening o : slab.openings()) {
        List<Edge> round = o.outline().ring().edges();
        o.edges().forEach((i, s) -> bars(round.get(i), s, pens.fillerLeast(), view, pens, marks));
      }
    }
    return marks;
  }

  private static void bars(
      Edge edge, EdgeSetting setting, double off, View view, Pens pens, List<Mark> marks) {
    for (Feature f : setting.features()) {
      double from = Math.min(1, f.from() / edge.length());
      double to = Math.min(1, f.to() / edge.length());
      if (to > from) {
        Path on = Path.of(view.on(edge.part(from, to)));
        marks.addAll(bar(new Path(Offsets.of(on, off)), pens));
      }
    }
  }

  /** Dashes as far as they run beside the slabs. */
  static List<Mark> given(Plan plan, View view, Pens pens) {
    List<Ring> slabs = outlines(plan, view);
    double reach = REACH * pens.hatchEvery();
    List<Mark> marks = new ArrayList<>();
    for (GivenJoint g : plan.given()) {
      for (Path p : where(view.on(g.path()), reach, p -> isBeside(p, slabs, reach))) {
        marks.add(line(Role.GIVEN, p, pens));
      }
    }
    return marks;
  }

  /** The outline in dashes and dots, as far as it runs on its slab and near it. */
  static List<Mark> zones(Plan plan, View view, Pens pens) {
    double reach = REACH / 2 * pens.hatchEvery();
    List<Mark> marks = new ArrayList<>();
    for (Slab slab : plan.slabs()) {
      Ring outline = view.on(slab.outline().ring());
      for (KeepClear zone : slab.keepClear()) {
        Path round = view.on(new Path(zone.outline().ring().edges()));
        for (Path p :
            where(round, reach, p -> outline.contains(p) || outline.distance(p) <= reach)) {
          marks.add(line(Role.ZONE, p, pens));
        }
      }
    }
    return marks;
  }

  /** A hollow bar, so that nobody takes it for a joint or a side, as a feature is drawn with. */
  public static List<Mark> bar(Path path, Pens pens) {
    double wide = 1.6 * pens.outline();
    double wall = pens.thin();
    List<Mark> marks = new ArrayList<>(List.of(Mark.Line.of(path, wide, Role.FEATURE)));
    if (path.length() > 3 * wall && wide > 3 * wall) {
      marks.add(Mark.Line.of(shorter(path, wall), wide - 2 * wall, Role.PAPER));
    }
    return marks;
  }

  /** A path without so much of it at either end, as far as its end edges are longer. */
  private static Path shorter(Path path, double by) {
    List<Edge> edges = new ArrayList<>(path.edges());
    Edge first = edges.getFirst();
    edges.set(0, first.part(Math.min(0.4, by / first.length()), 1));
    Edge last = edges.getLast();
    edges.set(edges.size() - 1, last.part(0, 1 - Math.min(0.4, by / last.length())));
    return new Path(edges);
  }

  /**
   * A line as one of these is drawn with.
   *
   * @param role {@link Role#GIVEN} or {@link Role#ZONE}
   */
  public static Mark.Line line(Role role, Path path, Pens pens) {
    double t = pens.thin();
    return switch (role) {
      case GIVEN -> new Mark.Line(path, pens.contraction(), List.of(7 * t, 5 * t), role);
      case ZONE -> new Mark.Line(path, t, List.of(6 * t, 3 * t, t, 3 * t), role);
      default -> throw new IllegalArgumentException(role + " is nothing that the user told");
    };
  }

  private static List<Ring> outlines(Plan plan, View view) {
    return plan.slabs().stream().map(s -> view.on(s.outline().ring())).toList();
  }

  private static boolean isBeside(Point p, List<Ring> slabs, double reach) {
    return slabs.stream().noneMatch(s -> s.contains(p))
        && slabs.stream().anyMatch(s -> s.distance(p) <= reach);
  }

  /** The parts of a path that lie in a place, found by small steps along it. */
  private static List<Path> where(Path path, double reach, Predicate<Point> place) {
    List<Path> parts = new ArrayList<>();
    List<Edge> run = new ArrayList<>();
    for (Edge e : path.edges()) {
      int steps = (int) Math.ceil(Math.clamp(STEPS * e.length() / reach, 1, MOST_STEPS));
      int from = -1;
      for (int i = 0; i <= steps; i++) {
        boolean in = i < steps && place.test(e.at((i + 0.5) / steps));
        if (in && from < 0) {
          from = i;
          if (i > 0) {
            close(run, parts);
          }
        } else if (!in && from >= 0) {
          run.add(e.part((double) from / steps, (double) i / steps));
          from = -1;
          if (i < steps) {
            close(run, parts);
          }
        } else if (!in) {
          close(run, parts);
        }
      }
    }
    close(run, parts);
    return parts;
  }

  private static void close(List<Edge> run, List<Path> parts) {
    if (!run.isEmpty()) {
      parts.add(new Path(run));
      run.clear();
    }
  }
}
