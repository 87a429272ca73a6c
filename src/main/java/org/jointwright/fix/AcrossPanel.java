package org.jointwright.fix;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.fix.line.Across;
import org.jointwright.fix.line.Chalk;
import org.jointwright.fix.line.Redraft;
import org.jointwright.joint.Panel;
import org.jointwright.joint.Side;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.EnclosingRectangle;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/**
 * Joints across a panel: in line with one that ends at it, or across its middle, as far as they
 * must run to make no tee; or only across the panel itself.
 */
final class AcrossPanel implements Remedy {
  /** A panel is cut in no more pieces than this. */
  private static final int MOST_PIECES = 4;

  /** How near to the middle, as a share of the panel, a joint must end to be gone on from. */
  private static final double MIDDLE = 0.2;

  /** A side of the panel is followed when it is square to its length within this, degrees. */
  private static final double ABOUT_SQUARE = 35;

  @Override
  public List<Fix> proposals(Broken broken) {
    return broken.panel().map(p -> proposals(broken, p)).orElse(List.of());
  }

  private static List<Fix> proposals(Broken broken, Panel panel) {
    List<Fix> fixes = new ArrayList<>();
    for (Point heading : headings(panel)) {
      Across across = Across.of(panel.region(), heading.left().times(-1));
      for (double at : places(panel, across)) {
        for (Chalk.Reach reach : List.of(Chalk.Reach.THROUGH, Chalk.Reach.NEXT)) {
          add(broken, panel, lines(broken, across, List.of(at), heading, reach), fixes);
        }
      }
    }
    Point along = EnclosingRectangle.of(panel.ring()).direction();
    for (int pieces = 3; pieces <= MOST_PIECES; pieces++) {
      add(broken, panel, grid(broken, panel, along, pieces, 1), fixes);
    }
    for (int pieces = 2; pieces <= MOST_PIECES; pieces++) {
      add(broken, panel, grid(broken, panel, along, pieces, 2), fixes);
    }
    return fixes;
  }

  /** The directions in which a panel may be cut: square to its length, and by its sides. */
  private static List<Point> headings(Panel panel) {
    List<Point> headings = new ArrayList<>();
    EnclosingRectangle box = EnclosingRectangle.of(panel.ring());
    headings.add(box.direction().left());
    for (Side s : panel.outer()) {
      Edge e = s.edge();
      if (e instanceof Arc a && a.length() > box.shortSide() / 2) {
        addNew(headings, a.middle().minus(a.centre()).unit(), 180);
      }
    }
    for (Side s : panel.outer()) {
      if (!(s.edge() instanceof Arc) && s.edge().length() > box.shortSide() / 2) {
        addNew(headings, s.edge().direction(0), ABOUT_SQUARE);
      }
    }
    return headings;
  }

  private static void addNew(List<Point> headings, Point heading, double within) {
    double off = Math.toDegrees(Math.asin(Math.min(1, Math.abs(heading.cross(headings.get(0))))));
    boolean isNew = headings.stream().allMatch(h -> Math.abs(h.cross(heading)) > 0.02);
    if (isNew && off <= within) {
      headings.add(heading);
    }
  }

  /** Where along a panel a joint may cut it: where others end at it, then in the middle. */
  private static List<Double> places(Panel panel, Across across) {
    Set<Double> places = new LinkedHashSet<>();
    double middle = across.amidst();
    for (Side s : panel.outer()) {
      double at = s.edge().start().dot(across.along());
      if (Math.abs(at - middle) <= MIDDLE * across.length()) {
        places.add(at);
      }
    }
    places.add(middle);
    return List.copyOf(places);
  }

  private static List<Path> grid(Broken broken, Panel panel, Point along, int pieces, int rows) {
    List<Path> paths = new ArrayList<>();
    paths.addAll(even(broken, panel, along, pieces));
    if (rows > 1) {
      paths.addAll(even(broken, panel, along.left(), rows));
    }
    return paths;
  }

  private static List<Path> even(Broken broken, Panel panel, Point along, int pieces) {
    Across across = Across.of(panel.region(), along);
    List<Double> places = new ArrayList<>();
    for (int i = 1; i < pieces; i++) {
      places.add(across.from() + across.length() * i / pieces);
    }
    return lines(broken, across, places, along.left(), Chalk.Reach.THROUGH);
  }

  private static List<Path> lines(
      Broken broken, Across across, List<Double> places, Point heading, Chalk.Reach reach) {
    List<Path> paths = new ArrayList<>();
    for (double at : places) {
      Optional<Path> path =
          across
              .amid(at)
              .map(p -> broken.marks().snapped(broken.floor(), p, heading))
              .flatMap(p -> Chalk.through(broken.floor(), p, heading, reach));
      path.ifPresent(paths::add);
    }
    return paths;
  }

  private static void add(Broken broken, Panel panel, List<Path> paths, List<Fix> fixes) {
    if (paths.isEmpty()) {
      return;
    }
    Redraft redraft = broken.redraft();
    for (Path p : paths) {
      redraft = redraft.adding(JointKind.CONTRACTION, p, Purpose.SPACING);
    }
    if (paths.size() > 1) {
      fixes.add(
          Fix.of(
              "fix.across.several",
              "fix.did.across",
              List.of(panel.id(), paths.size()),
              redraft.edit()));
      return;
    }
    Redraft done = redraft;
    fixes.add(
        broken
            .marks()
            .of(paths.getFirst())
            .map(
                m ->
                    Fix.of(
                        "fix.across.mark",
                        "fix.did.across",
                        List.of(panel.id(), m.tape(), m.at()),
                        done.edit()))
            .orElseGet(
                () ->
                    Fix.of(
                        "fix.across.plain", "fix.did.across", List.of(panel.id()), done.edit())));
  }
}
