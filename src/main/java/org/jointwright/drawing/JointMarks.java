package org.jointwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.plan.JointKind;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/** The three patterns of joints, and the nailhead of a locked one. Paths are on the medium. */
public final class JointMarks {
  private JointMarks() {}

  /**
   * The marks of a joint.
   *
   * @param path where it runs, on the medium
   * @param filler the true width of filler on the medium; used for isolation joints only
   */
  public static List<Mark> joint(JointKind kind, Path path, double filler, Pens pens) {
    return joint(kind, path, filler, pens, Box.ALL);
  }

  /**
   * The marks of a joint without the stubs and the hatching that are not seen: seen from near there
   * may be a hundred thousand of them.
   *
   * @param seen what is seen of the medium
   */
  static List<Mark> joint(JointKind kind, Path path, double filler, Pens pens, Box seen) {
    return switch (kind) {
      case CONTRACTION -> List.of(Mark.Line.of(path, pens.contraction(), Role.CONTRACTION));
      case CONSTRUCTION -> construction(path, pens, seen);
      case ISOLATION -> filler(path, Math.max(filler, pens.fillerLeast()), pens, seen);
    };
  }

  /** A thick line with stubs on its left as it runs in the plan: the side placed first. */
  private static List<Mark> construction(Path path, Pens pens, Box seen) {
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.Line.of(path, pens.construction(), Role.CONSTRUCTION));
    for (Edge e : path.edges()) {
      int n = (int) Math.floor(e.length() / pens.stubEvery());
      for (int i = 0; i < n; i++) {
        double t = (i + 0.5) / n;
        Point at = e.at(t);
        if (!seen.holds(at)) {
          continue;
        }
        // y runs down, so the plan's left is the medium's right.
        Point out = e.direction(t).left().times(-pens.stub());
        marks.add(Mark.Line.of(at, at.plus(out), pens.construction() * 0.45, Role.CONSTRUCTION));
      }
    }
    return marks;
  }

  private static List<Mark> filler(Path path, double width, Pens pens, Box seen) {
    List<Mark> marks = new ArrayList<>();
    List<Edge> left = Offsets.of(path, width / 2);
    List<Edge> right = Offsets.of(path, -width / 2);
    List<Edge> around = new ArrayList<>(left);
    List<Edge> back = right.reversed().stream().map(Edge::reversed).toList();
    join(around, back);
    marks.add(Mark.Area.of(new Ring(around), Role.FILLER));
    for (Edge e : path.edges()) {
      hatch(e, width, pens, seen, marks);
    }
    marks.add(Mark.Line.of(new Path(left), pens.filler(), Role.FILLER_LINE));
    marks.add(Mark.Line.of(new Path(right), pens.filler(), Role.FILLER_LINE));
    return marks;
  }

  private static void join(List<Edge> around, List<Edge> back) {
    Point far = around.getLast().end();
    Point first = around.getFirst().start();
    around.add(new Segment(far, back.getFirst().start()));
    around.addAll(back);
    around.add(new Segment(around.getLast().end(), first));
  }

  private static void hatch(Edge e, double width, Pens pens, Box seen, List<Mark> marks) {
    int n = (int) Math.floor((e.length() - width) / pens.hatchEvery());
    double spare = e.length() - n * pens.hatchEvery();
    for (int i = 0; i <= n; i++) {
      double t = (spare / 2 + i * pens.hatchEvery()) / e.length();
      if (t < 0 || t > 1) {
        continue;
      }
      Point at = e.at(t);
      if (!seen.holds(at)) {
        continue;
      }
      Point along = e.direction(t).times(width / 2);
      Point across = along.left();
      marks.add(
          Mark.Line.of(
              at.minus(along).minus(across),
              at.plus(along).plus(across),
              pens.filler() * 0.8,
              Role.FILLER_LINE));
    }
  }

  /** A nailhead, a dot in a ring, at {@code at}: the joint is locked. */
  public static List<Mark> nailhead(Point at, Pens pens) {
    double r = pens.fillerLeast();
    Ring ring = Rings.circle(at, r);
    return List.of(
        Mark.Area.of(ring, Role.PAPER),
        Mark.Line.of(new Path(ring.edges()), pens.contraction(), Role.CONTRACTION),
        Mark.Area.of(Rings.circle(at, r * 0.5), Role.CONTRACTION));
  }
}
