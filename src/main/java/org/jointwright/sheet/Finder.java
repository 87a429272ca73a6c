package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.joint.Numbering;
import org.jointwright.joint.Numbering.Item;
import org.jointwright.joint.Numbering.Work;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * Tells where the joints end, in an order that can be followed: a joint is told from another only
 * when that one is told without it.
 */
final class Finder {
  private final Sides sides;
  private final Numbering numbering;
  private final Map<Integer, Run> runs = new HashMap<>();

  /** A joint as its row tells it: it runs from the one end to the other. */
  record Run(Item item, Path path, Whereabouts from, Whereabouts to) {}

  private Finder(Lettering lettering, Numbering numbering) {
    this.sides = new Sides(lettering);
    this.numbering = numbering;
  }

  /** The joints of the plan as rows tell them, by number; box-outs are not among them. */
  static Map<Integer, Run> runs(Plan plan, Lettering lettering, Numbering numbering) {
    Finder finder = new Finder(lettering, numbering);
    List<Item> left = new ArrayList<>();
    numbering.items().stream().filter(i -> i.work() != Work.BOX_OUT).forEach(left::add);
    boolean more = true;
    while (more) {
      more = left.removeIf(finder::tell);
    }
    left.forEach(finder::tellByOffsets);
    return finder.runs;
  }

  private boolean tell(Item item) {
    Path path = forward(item);
    Optional<Whereabouts> from = end(item, path.start());
    Optional<Whereabouts> to = end(item, path.end());
    if (from.isEmpty() || to.isEmpty()) {
      return false;
    }
    put(item, path, from.get(), to.get());
    return true;
  }

  private void tellByOffsets(Item item) {
    Path path = forward(item);
    put(item, path, endOrOff(item, path.start()), endOrOff(item, path.end()));
  }

  private Whereabouts endOrOff(Item item, Point p) {
    return end(item, p).orElseGet(() -> sides.off(item.slab(), p));
  }

  private void put(Item item, Path path, Whereabouts from, Whereabouts to) {
    boolean unsure =
        (from instanceof Whereabouts.AtBoxOut || to instanceof Whereabouts.AtBoxOut)
            && !lengthLeads(path, from, to);
    if (unsure) {
      from = from instanceof Whereabouts.AtBoxOut ? sides.off(item.slab(), path.start()) : from;
      to = to instanceof Whereabouts.AtBoxOut ? sides.off(item.slab(), path.end()) : to;
    }
    runs.put(item.number(), new Run(item, path, from, to));
  }

  private Optional<Whereabouts> end(Item item, Point p) {
    return sides.onSide(item.slab(), p).or(() -> atBoxOut(p)).or(() -> onJoint(item, p));
  }

  private Optional<Whereabouts> atBoxOut(Point p) {
    return numbering.items().stream()
        .filter(i -> i.boxOut().isPresent())
        .filter(i -> ring(i).distance(p) <= Sides.ON)
        .findFirst()
        .map(i -> new Whereabouts.AtBoxOut(i.number()));
  }

  private Optional<Whereabouts> onJoint(Item item, Point p) {
    return numbering.items().stream()
        .filter(i -> i.number() != item.number())
        .map(i -> Optional.ofNullable(runs.get(i.number())))
        .flatMap(Optional::stream)
        .filter(r -> r.path().distance(p) <= Sides.ON && r.path().edges().size() == 1)
        .findFirst()
        .map(
            r -> {
              Edge e = r.path().edges().getFirst();
              return new Whereabouts.OnJoint(r.item().number(), e.nearest(p) * e.length());
            });
  }

  private static Ring ring(Item boxOut) {
    return boxOut.boxOut().orElseThrow().outline().ring();
  }

  /** Run from the left to the right or from below upwards, as tapes are. */
  private static Path forward(Item item) {
    Path path = item.path();
    Point d = path.end().minus(path.start());
    boolean steep = Math.abs(d.y()) > 1.4 * Math.abs(d.x());
    if ((steep ? d.y() : d.x()) >= 0) {
      return path;
    }
    return new Path(path.edges().reversed().stream().map(Edge::reversed).toList());
  }

  /** Whether the joint's length leads to the right corners of the box-outs and to no others. */
  private boolean lengthLeads(Path path, Whereabouts from, Whereabouts to) {
    if (path.edges().size() != 1 || path.edges().getFirst() instanceof Arc) {
      return false;
    }
    double length = path.length();
    List<Point> starts = candidates(from, path.start(), path.end());
    List<Point> ends = candidates(to, path.end(), path.start());
    double right = Double.POSITIVE_INFINITY;
    double wrong = Double.POSITIVE_INFINITY;
    for (Point a : starts) {
      for (Point b : ends) {
        double miss = Math.abs(a.distance(b) - length);
        if (a.distance(path.start()) < Sides.ON && b.distance(path.end()) < Sides.ON) {
          right = Math.min(right, miss);
        } else {
          wrong = Math.min(wrong, miss);
        }
      }
    }
    return right < Sides.ON && wrong > 1;
  }

  private List<Point> candidates(Whereabouts w, Point there, Point other) {
    if (!(w instanceof Whereabouts.AtBoxOut box)) {
      return List.of(there);
    }
    Ring ring = ring(numbering.items().get(box.number() - 1));
    Optional<BoxOutShape.Round> round = BoxOutShape.round(ring);
    return round
        .map(r -> List.of(r.centre().plus(other.minus(r.centre()).unit().times(r.radius()))))
        .orElseGet(ring::vertices);
  }
}
