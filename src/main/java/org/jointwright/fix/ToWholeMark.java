package org.jointwright.fix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.fix.line.Floor;
import org.jointwright.fix.line.Straight;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Moves a line so that its end stands at a whole mark of the side, measured from either corner. */
final class ToWholeMark implements Remedy {
  @Override
  public List<Fix> proposals(Broken broken) {
    Optional<Straight> line = broken.joint().flatMap(j -> Straight.of(broken.floor(), j));
    if (line.isEmpty()) {
      return List.of();
    }
    Point at = broken.finding().at();
    double step = broken.marks().step();
    List<Point> places = new ArrayList<>();
    for (Floor.Line l : broken.floor().at(at)) {
      if (l.isRim() && l.edge() instanceof Segment) {
        for (Edge from : List.of(l.edge(), l.edge().reversed())) {
          double along = from.start().distance(at);
          places.add(on(from, Math.rint(along / step) * step));
          places.add(on(from, Math.floor(along / step) * step));
          places.add(on(from, Math.ceil(along / step) * step));
        }
      }
    }
    List<Fix> fixes = new ArrayList<>();
    for (Point p : places) {
      Shifts.through(broken, line.get(), p).ifPresent(fixes::add);
      Point other = farEnd(line.get(), at);
      Shifts.turned(broken, line.get(), other, p.minus(other).unit(), "fix.turn.toMark")
          .ifPresent(fixes::add);
    }
    return fixes;
  }

  private static Point on(Edge edge, double along) {
    return edge.at(Math.clamp(along / edge.length(), 0, 1));
  }

  private static Point farEnd(Straight line, Point at) {
    List<Point> ends = line.ends();
    return ends.getFirst().distance(at) > ends.getLast().distance(at)
        ? ends.getFirst()
        : ends.getLast();
  }
}
