package org.jointwright.fix;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jointwright.fix.line.Across;
import org.jointwright.fix.line.Straight;
import org.jointwright.joint.Panel;
import org.jointwright.shape.Point;

/**
 * Moves a joint beside a panel: half way between what lies on both sides of it, or just as far as
 * the panel needs.
 */
final class EvenOut implements Remedy {
  /** Most steps that are tried where the measure itself does not say how far, inches each. */
  private static final List<Double> STEPS = List.of(6.0, 12.0, 24.0);

  @Override
  public List<Fix> proposals(Broken broken) {
    return broken.panel().map(p -> proposals(broken, p)).orElse(List.of());
  }

  private static List<Fix> proposals(Broken broken, Panel panel) {
    List<Fix> fixes = new ArrayList<>();
    for (Straight line : Neighbours.lines(broken, panel)) {
      if (!line.isLocked()) {
        for (double by : shifts(broken, panel, line)) {
          Shifts.toWholeMark(broken, line, by).ifPresent(fixes::add);
        }
      }
    }
    return fixes;
  }

  /** How far to the left a line may go, inches. */
  private static Set<Double> shifts(Broken broken, Panel panel, Straight line) {
    Point left = line.heading().left();
    double middle = Across.of(panel.region(), left).amidst();
    // The panel lies on one side of the line: towards it is plus here.
    double side = middle > line.at().dot(left) ? 1 : -1;
    double own = Across.of(panel.region(), left).length();
    double other =
        Neighbours.beyond(broken, panel, line).stream()
            .mapToDouble(p -> Across.of(p.region(), left).length())
            .max()
            .orElse(own);
    Set<Double> shifts = new LinkedHashSet<>();
    shifts.add(side * (own - other) / 2);
    double limit = broken.finding().limit();
    switch (broken.finding().rule()) {
      case "M1" -> shifts.add(side * Math.ceil(own - limit));
      case "M2" -> {
        double cross = Across.of(panel.region(), line.heading()).length();
        shifts.add(side * Math.ceil(own - limit * cross));
        shifts.add(-side * Math.ceil(cross / limit - own));
      }
      case "M5" -> shifts.add(-side * Math.ceil(limit - own));
      default -> {
        for (double step : STEPS) {
          shifts.add(side * step);
          shifts.add(-side * step);
        }
      }
    }
    return shifts;
  }
}
