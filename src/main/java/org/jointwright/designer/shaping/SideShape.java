package org.jointwright.designer.shaping;

import java.util.List;
import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Pointer;
import org.jointwright.designer.state.Soundness;
import org.jointwright.plan.LetteredCorner;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Vertex;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.Named;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.Rounding;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.Together;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Sides pushed out, bent and straightened; corners rounded. */
public final class SideShape {
  /** A side beside one that runs flatter than this to it does not guide it: sine of the angle. */
  private static final double GUIDES = 0.2;

  private SideShape() {}

  /** Which way is out of a slab, or of an opening, half way along a side; of length 1. */
  public static Point out(Edge edge) {
    return chord(edge).left().times(-1);
  }

  private static Point chord(Edge edge) {
    return edge.end().minus(edge.start()).unit();
  }

  /**
   * A side pushed outwards by so many inches; its ends run along the straight sides beside it, so
   * that these keep their way. Empty where the outline would be none, or the side lose its length.
   *
   * @param goesOn whether it is a part of the step before
   */
  public static Optional<Desk> pushed(Desk desk, Ref ref, double by, boolean goesOn) {
    return SharedSide.pushed(desk, ref, List.of(), by, goesOn);
  }

  /** What that does to both its ends; nothing where the side would lose its length. */
  static List<Edit> moves(Plan plan, Ref ref, double by) {
    List<Edge> edges = Picks.outline(plan, ref).map(o -> o.ring().edges()).orElseGet(List::of);
    int n = edges.size();
    if (n < 3) {
      return List.of();
    }
    Edge side = edges.get(ref.index());
    Point out = out(side).times(by);
    Edge before = edges.get((ref.index() + n - 1) % n);
    Edge after = edges.get((ref.index() + 1) % n);
    Point start = side.start().plus(along(before, out));
    Point end = side.end().plus(along(after, out));
    Ref next = new Ref(ref.slab(), ref.ring(), (ref.index() + 1) % n);
    return end.minus(start).dot(chord(side)) <= 0
        ? List.of()
        : List.of(new SlabEdit.MoveCorner(ref, start), new SlabEdit.MoveCorner(next, end));
  }

  /** How an end comes along the side beside it when its own side goes by {@code out}. */
  private static Point along(Edge beside, Point out) {
    if (!(beside instanceof Segment) || out.norm() == 0) {
      return out;
    }
    Point u = beside.direction(0);
    double share = u.dot(out.unit());
    return Math.abs(share) < GUIDES ? out : u.times(out.norm() / share);
  }

  /** How far a side bulges out, inches; negative where it bulges in. */
  public static double bulge(Edge edge) {
    Point middle = edge.start().towards(edge.end(), 0.5);
    return edge.at(0.5).minus(middle).dot(out(edge));
  }

  /**
   * A side that bulges out so far; 0 makes it straight. Empty where it would be more than half a
   * circle, or the outline none.
   *
   * @param goesOn whether it is a part of the step before
   */
  public static Optional<Desk> bulging(Desk desk, Ref ref, double inches, boolean goesOn) {
    Edge edge = Picks.edge(desk.plan(), ref).orElseThrow();
    double chord = edge.start().distance(edge.end());
    if (Math.abs(inches) > chord / 2) {
      return Optional.empty();
    }
    return bent(desk, ref, inches, goesOn);
  }

  private static Optional<Desk> bent(Desk desk, Ref ref, double inches, boolean goesOn) {
    Edge edge = Picks.edge(desk.plan(), ref).orElseThrow();
    Point middle = edge.start().towards(edge.end(), 0.5);
    Optional<Point> via =
        inches == 0 ? Optional.empty() : Optional.of(middle.plus(out(edge).times(inches)));
    SlabEdit.BendEdge edit = new SlabEdit.BendEdge(ref, via);
    return sound(goesOn ? desk.goingOn(edit) : desk.edited(edit), ref);
  }

  /**
   * A corner put on a side, picked: at the whole inch, or centimetre, nearest to a point. Where the
   * side is too short for a corner that is clear of both ends nothing changes.
   */
  public static Desk cornerOn(Desk desk, Ref ref, Point near) {
    Edge edge = Picks.edge(desk.plan(), ref).orElseThrow();
    double step = Pointer.wholeStep(desk.plan());
    double along = Math.rint(edge.nearest(near) * edge.length() / step) * step;
    double clear = Math.max(1, step);
    if (edge.length() < 2 * clear) {
      return desk;
    }
    double share = Math.clamp(along, clear, edge.length() - clear) / edge.length();
    Ref corner = new Ref(ref.slab(), ref.ring(), ref.index() + 1);
    return desk.edited(new SlabEdit.AddCorner(ref, Vertex.at(edge.at(share))))
        .picking(new Pick.AtCorner(corner));
  }

  /** Whether an arc rounds a corner, so that it can be made sharp again. */
  public static boolean isRounding(Plan plan, Ref ref) {
    return Picks.outline(plan, ref)
        .filter(o -> ref.index() < o.vertices().size())
        .flatMap(o -> Rounding.sharp(o, ref.index()))
        .isPresent();
  }

  /**
   * An arc of another radius: one that rounds a corner goes on rounding it, another keeps its ends
   * and its side. Empty where there is none so small, or so large.
   */
  public static Optional<Desk> ofRadius(Desk desk, Ref ref, double radius) {
    Edge edge = Picks.edge(desk.plan(), ref).orElseThrow();
    if (isRounding(desk.plan(), ref)) {
      return rerounded(desk, ref, radius);
    }
    double half = edge.start().distance(edge.end()) / 2;
    if (!(edge instanceof Arc arc) || radius < half) {
      return Optional.empty();
    }
    double flat = Math.sqrt(radius * radius - half * half);
    double rise = Math.abs(arc.sweep()) > Math.PI ? radius + flat : radius - flat;
    return bent(desk, ref, rise * Math.signum(bulge(edge)), false);
  }

  private static Optional<Desk> rerounded(Desk desk, Ref ref, double radius) {
    Plan sharp = new SlabEdit.SharpenCorner(ref).applyTo(desk.plan());
    int n = Picks.outline(sharp, ref).orElseThrow().vertices().size();
    // An arc between the last corner and the first leaves the first one sharp.
    Ref corner = new Ref(ref.slab(), ref.ring(), ref.index() == n ? 0 : ref.index());
    return most(sharp, corner)
        .filter(m -> radius <= m)
        .flatMap(
            m -> {
              List<Edit> both =
                  List.of(
                      new SlabEdit.SharpenCorner(ref), new SlabEdit.RoundCorner(corner, radius));
              String letter = letter(sharp, corner);
              Edit edit = new Named("window.did.roundCorner", List.of(letter), new Together(both));
              return sound(desk.edited(edit), ref);
            });
  }

  private static String letter(Plan plan, Ref corner) {
    return Picks.vertex(plan, corner)
        .flatMap(p -> Lettering.of(plan).cornerAt(p))
        .map(LetteredCorner::letter)
        .orElse("");
  }

  /** The greatest radius that a corner can be rounded by; empty where it cannot be. */
  public static Optional<Double> most(Plan plan, Ref corner) {
    return Picks.outline(plan, corner)
        .filter(o -> corner.index() < o.vertices().size())
        .flatMap(o -> Rounding.most(o, corner.index()));
  }

  /** A corner made round; empty where it has no room for that. */
  public static Optional<Desk> rounded(Desk desk, Ref corner, double radius) {
    return most(desk.plan(), corner)
        .filter(m -> radius > 0 && radius <= m)
        .flatMap(m -> sound(desk.edited(new SlabEdit.RoundCorner(corner, radius)), corner));
  }

  /** A rounded corner made sharp again. */
  public static Optional<Desk> sharpened(Desk desk, Ref arc) {
    return isRounding(desk.plan(), arc)
        ? sound(desk.edited(new SlabEdit.SharpenCorner(arc)), arc)
        : Optional.empty();
  }

  private static Optional<Desk> sound(Desk desk, Ref ref) {
    return Soundness.holds(desk.plan(), ref.slab()) ? Optional.of(desk) : Optional.empty();
  }
}
