package org.jointwright.fix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.fix.line.Chalk;
import org.jointwright.fix.line.Redraft;
import org.jointwright.joint.Panel;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.EnclosingRectangle;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/** Cuts a panel through that goes all the way round a hole: joints from the hole on two sides. */
final class FromHole implements Remedy {
  private static final List<Chalk.Reach> REACHES = List.of(Chalk.Reach.THROUGH, Chalk.Reach.NEXT);

  @Override
  public List<Fix> proposals(Broken broken) {
    List<Fix> fixes = new ArrayList<>();
    Optional<Panel> panel = broken.panel();
    if (panel.isEmpty()) {
      return fixes;
    }
    Point u = EnclosingRectangle.of(panel.get().ring()).direction();
    for (Ring hole : panel.get().region().holes()) {
      Point v = u.left();
      Point back = u.times(-1);
      Point down = v.times(-1);
      List<List<Point>> stars =
          List.of(
              List.of(v, down),
              List.of(u, back),
              List.of(u, v, back, down),
              star(u.turned(Math.PI / 4), 4),
              star(u, 3),
              star(v, 3));
      for (Chalk.Reach reach : REACHES) {
        stars.forEach(star -> add(broken, panel.get(), fromMiddle(hole, star), reach, fixes));
        add(broken, panel.get(), fromCorners(hole, u), reach, fixes);
        add(broken, panel.get(), fromCorners(hole, v), reach, fixes);
      }
    }
    return fixes;
  }

  private record Start(Point at, Point heading) {}

  private static List<Point> star(Point first, int rays) {
    List<Point> star = new ArrayList<>();
    for (int i = 0; i < rays; i++) {
      star.add(first.turned(2 * Math.PI * i / rays));
    }
    return star;
  }

  /** Where rays from the middle of a hole leave it. */
  private static List<Start> fromMiddle(Ring hole, List<Point> star) {
    Point middle = hole.box().centre();
    double far = hole.box().width() + hole.box().height();
    List<Start> starts = new ArrayList<>();
    for (Point way : star) {
      Segment ray = new Segment(middle, middle.plus(way.times(far)));
      hole.edges().stream()
          .flatMap(e -> Crossing.of(ray, e).stream().map(c -> e.at(c.second())))
          .max(Comparator.comparingDouble(p -> p.distance(middle)))
          .ifPresent(p -> starts.add(new Start(p, way)));
    }
    return starts;
  }

  /** The corners of a hole, each left along a direction, away from the hole. */
  private static List<Start> fromCorners(Ring hole, Point along) {
    Point middle = hole.box().centre();
    List<Start> starts = new ArrayList<>();
    for (Edge e : hole.edges()) {
      Point corner = e.start();
      double side = Math.signum(corner.minus(middle).dot(along));
      starts.add(new Start(corner, along.times(side == 0 ? 1 : side)));
    }
    return starts.size() > 4 ? List.of() : starts;
  }

  private static void add(
      Broken broken, Panel panel, List<Start> starts, Chalk.Reach reach, List<Fix> fixes) {
    Redraft redraft = broken.redraft();
    int joints = 0;
    for (Start s : starts) {
      Optional<Path> path = Chalk.from(broken.floor(), s.at(), s.heading(), reach);
      if (path.isPresent()) {
        redraft = redraft.adding(JointKind.CONTRACTION, path.get(), Purpose.SPACING);
        joints++;
      }
    }
    if (joints > 0) {
      fixes.add(Fix.of("fix.hole", "fix.did.hole", List.of(panel.id(), joints), redraft.edit()));
    }
  }
}
