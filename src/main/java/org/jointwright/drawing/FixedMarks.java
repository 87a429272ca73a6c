package org.jointwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.plan.FixedKind;
import org.jointwright.shape.Box;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** Fixed objects: a drain is a grate, everything else a solid body. */
final class FixedMarks {
  private FixedMarks() {}

  static List<Mark> of(FixedKind kind, Ring ring, Pens pens) {
    return switch (kind) {
      case DRAIN, CLEANOUT -> grate(ring, pens);
      case POST, COLUMN, HYDRANT, OTHER -> List.of(Mark.Area.of(ring, Role.FIXED));
      case TREE ->
          List.of(
              Mark.Area.of(ring, Role.PAPER),
              Mark.Line.of(new Path(ring.edges()), pens.thin(), Role.FIXED),
              Mark.Area.of(Rings.circle(ring.box().centre(), pens.thin() * 2), Role.FIXED));
    };
  }

  private static List<Mark> grate(Ring ring, Pens pens) {
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.Area.of(ring, Role.PAPER));
    Box box = ring.box();
    int bars = 3;
    for (int i = 1; i <= bars; i++) {
      double x = box.minX() + box.width() * i / (bars + 1);
      double half = chord(ring, x);
      double y = box.centre().y();
      marks.add(
          Mark.Line.of(
              new Point(x, y - half), new Point(x, y + half), pens.thin() * 0.7, Role.FIXED));
    }
    marks.add(Mark.Line.of(new Path(ring.edges()), pens.contraction(), Role.FIXED));
    return marks;
  }

  /** Half the height of the ring at {@code x}, found by halving. */
  private static double chord(Ring ring, double x) {
    double y = ring.box().centre().y();
    double in = 0;
    double out = ring.box().height() / 2;
    for (int i = 0; i < 20; i++) {
      double mid = (in + out) / 2;
      if (ring.contains(new Point(x, y - mid)) && ring.contains(new Point(x, y + mid))) {
        in = mid;
      } else {
        out = mid;
      }
    }
    return in;
  }
}
