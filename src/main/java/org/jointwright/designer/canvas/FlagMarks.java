package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Finding;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.drawing.Flags;
import org.jointwright.drawing.Mark;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;

/** The flags of the findings, each at its place or just beside it. */
final class FlagMarks {
  private static final double FLAG = 19;

  /** Half of what a stake takes in width; pixels. */
  private static final double STAKE = 1.5;

  private static final List<Point> ASIDE =
      List.of(new Point(0, 0), new Point(10, 6), new Point(-12, 8), new Point(6, -14));

  private FlagMarks() {}

  /**
   * A flag that found room.
   *
   * @param index of its finding, from 0
   * @param foot where its stake stands
   * @param cloth the room of its cloth
   */
  private record Planted(int index, Point foot, Box cloth) {
    Box stake() {
      return new Box(foot.x() - STAKE, cloth.minY(), foot.x() + STAKE, foot.y());
    }
  }

  /** The flags' marks; their room is taken from {@code places}. */
  static List<Mark> of(Desk desk, Places places) {
    List<Finding> findings = findings(desk);
    List<Mark> marks = new ArrayList<>();
    for (Planted p : planted(desk, places)) {
      places.stake(p.stake());
      String number = Integer.toString(p.index() + 1);
      marks.add(Flags.flag(p.foot(), number, PlanMarks.shape(findings.get(p.index())), FLAG));
    }
    return marks;
  }

  /** The cloths of the flags, where {@link #of} paints them. */
  static List<Box> cloths(Desk desk) {
    return planted(desk, new Places()).stream().map(Planted::cloth).toList();
  }

  private static List<Planted> planted(Desk desk, Places places) {
    List<Planted> planted = new ArrayList<>();
    List<Finding> findings = findings(desk);
    Box paper = desk.viewport().paper().grown(3 * FLAG);
    for (int i = 0; i < findings.size(); i++) {
      Point at = desk.viewport().toPaper(findings.get(i).at());
      if (!paper.holds(at)) {
        continue;
      }
      double wide = FLAG * (1.7 + 0.5 * (Integer.toString(i + 1).length() - 1));
      for (Point by : ASIDE) {
        Point foot = at.plus(by);
        Box box = new Box(foot.x(), foot.y() - 2 * FLAG, foot.x() + wide, foot.y() - FLAG * 0.9);
        if (places.isFree(box)) {
          places.take(box);
          planted.add(new Planted(i, foot, box));
          break;
        }
      }
    }
    return planted;
  }

  private static List<Finding> findings(Desk desk) {
    return desk.laying().laid().map(Laid::findings).orElse(List.of());
  }
}
