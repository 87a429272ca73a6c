package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.LetteredCorner;
import org.jointwright.plan.Lettering;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/** Where the letters of the corners go, however the plan lies in the window. */
final class Corners {
  private final Layout layout;
  private final List<Round> rounds = new ArrayList<>();

  /** What runs round a slab or an opening in it. */
  private record Round(String slab, Ring ring, boolean isOpening) {}

  private Corners(Layout layout) {
    this.layout = layout;
    for (SlabLayout s : layout.slabs()) {
      String id = s.slab().id();
      rounds.add(new Round(id, s.slab().outline().ring(), false));
      s.slab().openings().forEach(o -> rounds.add(new Round(id, o.outline().ring(), true)));
    }
  }

  /**
   * A corner and its letter.
   *
   * @param letter its letter
   * @param at where it is
   * @param out the way from it to its letter, out of the concrete, of length 1
   * @param opening the opening that it is a corner of; empty for a slab's own
   * @param lines the edges that meet or pass there, none of which may strike the letter
   */
  record Corner(String letter, Point at, Point out, Optional<InSlab> opening, List<Edge> lines) {
    /** Copies the list. */
    Corner {
      lines = List.copyOf(lines);
    }
  }

  /** The box round an opening in a slab. */
  record InSlab(String slab, Box box) {}

  /** The corners of a layout. */
  static List<Corner> of(Layout layout, Lettering lettering) {
    Corners corners = new Corners(layout);
    return lettering.corners().stream().map(corners::corner).toList();
  }

  private Corner corner(LetteredCorner corner) {
    Point at = corner.at();
    Point sum = new Point(0, 0);
    Optional<InSlab> opening = Optional.empty();
    List<Edge> lines = new ArrayList<>();
    for (Round round : rounds) {
      if (!round.ring().box().grown(1).holds(at)) {
        continue;
      }
      for (Edge e : round.ring().edges()) {
        if (e.distance(at) < Lettering.SAME_PLACE) {
          lines.add(e);
        }
        if (e.start().distance(at) < Lettering.SAME_PLACE) {
          sum = sum.minus(e.direction(0));
        } else if (e.end().distance(at) < Lettering.SAME_PLACE) {
          sum = sum.plus(e.direction(1));
        }
      }
      if (round.isOpening() && round.ring().distance(at) < Lettering.SAME_PLACE) {
        opening = Optional.of(new InSlab(round.slab(), round.ring().box()));
      }
    }
    if (sum.norm() < 0.05) {
      // No turn to point away from: square to the line that runs through.
      return new Corner(corner.letter(), at, smooth(at), Optional.empty(), lines);
    }
    Point way = sum.unit();
    boolean isInwards = isConcrete(at.plus(way.times(2)));
    return new Corner(corner.letter(), at, isInwards ? way.times(-1) : way, opening, lines);
  }

  private Point smooth(Point at) {
    return layout.slabs().stream()
        .flatMap(s -> s.slab().outline().ring().edges().stream())
        .filter(e -> e.start().distance(at) < Lettering.SAME_PLACE)
        .map(e -> e.direction(0).left().times(-1))
        .findFirst()
        .orElse(new Point(-0.7, 0.7).unit());
  }

  private boolean isConcrete(Point p) {
    for (SlabLayout s : layout.slabs()) {
      if (s.slab().outline().ring().box().holds(p) && s.slab().region().contains(p)) {
        return true;
      }
    }
    return false;
  }
}
