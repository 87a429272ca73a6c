package org.jointwright.check.evidence;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.along.Nearness;
import org.jointwright.check.along.Stretches;
import org.jointwright.check.along.Stretches.Stretch;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Traced;

/**
 * Joints that meet across an edge which two slabs share with no filler between.
 *
 * <p>Of two slabs the one with fewer ends there, but not none, is looked at; the first on a tie.
 * Ends within 1 in of the end of what is shared are left out: they end at a corner, not across.
 */
public final class LineUps {
  private static final double MEET = Tolerance.LINE_UP.value().inches();

  /** Slabs that touch for less share no edge, inches. */
  private static final double SHORTEST = 6;

  /**
   * An end on a shared edge.
   *
   * @param joint the joint that ends
   * @param at where
   * @param other the slab on the far side
   * @param nearest how far along the other slab's nearest joint ends, inches; infinite when none
   */
  public record End(Joint joint, Point at, String other, double nearest) {
    /** Whether it meets none of the other slab's joints. */
    public boolean misses() {
      return nearest > MEET;
    }
  }

  private final Layout layout;
  private final List<Edge> filler;

  LineUps(Layout layout, List<Edge> filler) {
    this.layout = layout;
    this.filler = filler;
  }

  /** The ends of a slab's joints that are looked at, neighbour by neighbour. */
  List<End> of(SlabLayout slab) {
    List<End> found = new ArrayList<>();
    boolean after = false;
    for (SlabLayout other : layout.slabs()) {
      if (other.slab().id().equals(slab.slab().id())) {
        after = true;
        continue;
      }
      List<End> ours = ends(slab, other);
      int theirs = ours.isEmpty() ? 0 : ends(other, slab).size();
      boolean fewer = theirs == 0 || ours.size() < theirs || (ours.size() == theirs && after);
      if (fewer) {
        found.addAll(ours);
      }
    }
    return found;
  }

  private List<End> ends(SlabLayout slab, SlabLayout other) {
    List<List<Stretch>> shared = shared(edges(slab), edges(other));
    List<Joint> theirs = shared.isEmpty() ? List.of() : runningIn(other);
    List<End> ends = new ArrayList<>();
    for (Joint j : shared.isEmpty() ? List.<Joint>of() : runningIn(slab)) {
      for (Point p : List.of(j.path().start(), j.path().end())) {
        if (shared.stream().anyMatch(run -> isAmid(run, p))) {
          ends.add(new End(j, p, other.slab().id(), nearest(theirs, p)));
        }
      }
    }
    return ends;
  }

  private static double nearest(List<Joint> joints, Point p) {
    return joints.stream()
        .mapToDouble(j -> Math.min(j.path().start().distance(p), j.path().end().distance(p)))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static List<Edge> edges(SlabLayout slab) {
    return Concrete.of(slab.slab(), List.of()).edges();
  }

  /** Joints that run through the slab: those that lie along slabs' edges are no lines across. */
  private List<Joint> runningIn(SlabLayout slab) {
    List<Edge> edges = layout.slabs().stream().flatMap(s -> edges(s).stream()).toList();
    return slab.joints().stream()
        .filter(j -> j.kind() != JointKind.ISOLATION)
        .map(j -> j.withPath(Traced.path(j.path())))
        .filter(j -> !j.path().isClosed())
        .filter(
            j ->
                j.path().edges().stream()
                    .anyMatch(e -> !Nearness.isOn(edges, e.at(0.5), Nearness.ON)))
        .toList();
  }

  /** The unbroken runs of our edges that lie on theirs with no filler between. */
  private List<List<Stretch>> shared(List<Edge> ours, List<Edge> theirs) {
    List<List<Stretch>> runs = new ArrayList<>();
    for (Edge e : ours) {
      List<Edge> near =
          theirs.stream().filter(t -> t.box().grown(Nearness.ON).meets(e.box())).toList();
      if (near.isEmpty()) {
        continue;
      }
      for (Stretch s :
          Stretches.of(
              e,
              p -> Nearness.isOn(near, p, Nearness.ON) && !Nearness.isOn(filler, p, Nearness.ON))) {
        if (s.length() > Nearness.ON) {
          joined(runs, s);
        }
      }
    }
    runs.removeIf(run -> Stretches.length(run) <= SHORTEST);
    return runs;
  }

  /** Adds a stretch to the runs it goes on from, or as a run of its own. */
  private static void joined(List<List<Stretch>> runs, Stretch s) {
    List<Stretch> whole = new ArrayList<>(List.of(s));
    List<List<Stretch>> touching =
        runs.stream().filter(run -> run.stream().anyMatch(r -> touch(r, s))).toList();
    touching.forEach(whole::addAll);
    runs.removeAll(touching);
    runs.add(whole);
  }

  private static boolean touch(Stretch a, Stretch b) {
    return ends(a).stream().anyMatch(p -> ends(b).stream().anyMatch(q -> same(p, q)));
  }

  private static boolean same(Point p, Point q) {
    return p.distance(q) <= Nearness.ON;
  }

  private static List<Point> ends(Stretch s) {
    return List.of(s.edge().at(s.from()), s.edge().at(s.to()));
  }

  /** Whether a point lies on a run and not at its end. */
  private static boolean isAmid(List<Stretch> run, Point p) {
    boolean on =
        run.stream()
            .anyMatch(
                s -> {
                  double t = Math.clamp(s.edge().nearest(p), s.from(), s.to());
                  return s.edge().at(t).distance(p) <= Nearness.ON;
                });
    return on
        && run.stream()
            .flatMap(s -> ends(s).stream())
            .filter(end -> isFree(run, end))
            .noneMatch(end -> end.distance(p) <= MEET);
  }

  private static boolean isFree(List<Stretch> run, Point end) {
    return run.stream().flatMap(s -> ends(s).stream()).filter(q -> same(q, end)).count() < 2;
  }
}
