package org.jointwright.drawing;

import java.util.List;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** The parts of a tape: a bar where it hooks, an arrow at each mark. */
public final class TapeMarks {
  private TapeMarks() {}

  /** The hook: a bar across {@code heading} at the first corner. */
  public static Mark.Line hook(Point at, Point heading, double length, double width, Role role) {
    Point half = heading.unit().left().times(length / 2);
    return Mark.Line.of(at.minus(half), at.plus(half), width, role);
  }

  /**
   * An arrowhead with its tip at {@code at}, three times as long as wide (ASME Y14.2-2008, as
   * quoted by a drafting summary).
   */
  public static Mark arrow(Point at, Point heading, double length, Role role) {
    Point back = at.minus(heading.unit().times(length));
    Point half = heading.unit().left().times(length / 6);
    return Mark.Area.of(Ring.of(List.of(at, back.plus(half), back.minus(half))), role);
  }

  /** A string line: dots. */
  public static Mark string(Path path, double width) {
    return new Mark.Line(path, width, List.of(width * 1.5, width * 3), Role.STRING);
  }
}
