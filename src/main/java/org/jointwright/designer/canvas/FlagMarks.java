package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jointwright.check.Finding;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.drawing.Flags;
import org.jointwright.drawing.Mark;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;

/** The flags of the findings, each at its place or just beside it. */
public final class FlagMarks {
  private static final double FLAG = 19;

  /** Half of what a stake takes in width; pixels. */
  private static final double STAKE = 1.5;

  /** A finding this near to a stake has its flag on that stake; pixels. */
  private static final double NEAR = 24;

  /** How much higher than the one below it a flag flies on the same stake. */
  private static final double HIGHER = FLAG * 1.15;

  /** More flags than this on one stake would reach over what stands behind. */
  private static final int MOST = 5;

  private static final List<Point> ASIDE =
      List.of(new Point(0, 0), new Point(10, 6), new Point(-12, 8), new Point(6, -14));

  private FlagMarks() {}

  /**
   * A flag that found room.
   *
   * @param index of its finding, from 0
   * @param foot where its stake stands
   * @param level how many flags fly below it on the same stake
   * @param cloth the room of its cloth
   */
  private record Planted(int index, Point foot, int level, Box cloth) {
    static Planted of(int index, Point foot, int level) {
      double wide = FLAG * (1.7 + 0.5 * (Integer.toString(index + 1).length() - 1));
      double top = foot.y() - 2 * FLAG - level * HIGHER;
      return new Planted(
          index, foot, level, new Box(foot.x(), top, foot.x() + wide, top + 1.1 * FLAG));
    }

    /** Where a stake of its own would stand. */
    Point hoisted() {
      return foot.minus(new Point(0, level * HIGHER));
    }

    Box stake() {
      return new Box(foot.x() - STAKE, cloth.minY(), foot.x() + STAKE, foot.y());
    }
  }

  /** The flags, the stake of each first; their room is taken from {@code places}. */
  static List<Mark.Group> of(Desk desk, Places places) {
    List<Finding> findings = findings(desk);
    List<Mark.Group> marks = new ArrayList<>();
    for (Planted p : planted(desk, places)) {
      places.stake(p.stake());
      String number = Integer.toString(p.index() + 1);
      marks.add(Flags.flag(p.hoisted(), number, PlanMarks.shape(findings.get(p.index())), FLAG));
    }
    return marks;
  }

  /** The cloths of the flags, where {@link #of} paints them. */
  static List<Box> cloths(Desk desk) {
    return planted(desk, new Places()).stream().map(Planted::cloth).toList();
  }

  /** The number of the finding whose flag is at a place of the paper, from 1; empty at none. */
  public static OptionalInt at(Desk desk, Point place) {
    return planted(desk, new Places()).stream()
        .filter(p -> p.cloth().holds(place))
        .mapToInt(p -> p.index() + 1)
        .findFirst();
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
      Optional<Planted> found =
          wanted(i, at, planted).stream().filter(p -> places.isFree(p.cloth())).findFirst();
      found.ifPresent(
          p -> {
            places.take(p.cloth());
            planted.add(p);
          });
    }
    return planted;
  }

  /** Where a flag may fly: on top of those of a stake beside it, or on a stake of its own. */
  private static List<Planted> wanted(int index, Point at, List<Planted> planted) {
    List<Planted> wanted = new ArrayList<>();
    for (Planted p : planted) {
      if (p.foot().distance(at) <= NEAR && p.level() + 1 < MOST) {
        wanted.add(Planted.of(index, p.foot(), p.level() + 1));
      }
    }
    ASIDE.forEach(by -> wanted.add(Planted.of(index, at.plus(by), 0)));
    return wanted;
  }

  private static List<Finding> findings(Desk desk) {
    return desk.laying().laid().map(Laid::findings).orElse(List.of());
  }
}
