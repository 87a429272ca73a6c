package org.jointwright.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jointwright.measure.Length;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;

/** Invented yards, 8 in thick, with openings that stand in no line. No source. */
public final class Yards {
  private static final String ID = "yard";
  private static final int THICK = 8;

  /** What the side of a panel comes to about, feet. */
  private static final double PANEL = 15;

  /** There is an opening in each square of so many feet. */
  private static final double APART = 150;

  private static final double WIDE = 26;
  private static final double HIGH = 17;

  private Yards() {}

  /** A square yard of about so many panels. */
  public static Plan of(int panels) {
    double side = PANEL * Math.round(Math.sqrt(panels));
    return of(side, side);
  }

  /** A yard, feet. */
  public static Plan of(double wide, double high) {
    List<Opening> openings = new ArrayList<>();
    int across = (int) Math.max(1, Math.floor(wide / APART));
    int up = (int) Math.max(1, Math.floor(high / APART));
    for (int i = 0; i < across; i++) {
      for (int k = 0; k < up; k++) {
        double x = (i + 0.4) * wide / across + 3 * ((i + 2 * k) % 4);
        double y = (k + 0.4) * high / up + 3 * ((2 * i + k) % 4);
        Outline outline = Outline.of(corners(x, y, x + WIDE, y + HIGH));
        openings.add(new Opening(outline, Map.of(), Kept.NOTHING));
      }
    }
    Slab slab =
        Slab.of(ID, Outline.of(corners(0, 0, wide, high)))
            .withThickness(Length.inches(THICK))
            .withOpenings(openings);
    return Plan.EMPTY.withSlabs(List.of(slab));
  }

  private static List<Point> corners(double x0, double y0, double x1, double y1) {
    return List.of(p(x0, y0), p(x1, y0), p(x1, y1), p(x0, y1));
  }

  private static Point p(double x, double y) {
    return new Point(12 * x, 12 * y);
  }
}
