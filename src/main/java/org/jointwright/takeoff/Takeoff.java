package org.jointwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Numbering;
import org.jointwright.measure.UnitSystem;

/**
 * All that a plan takes.
 *
 * @param lines what is ordered or counted, in the order of {@link Item}
 * @param mix what the concrete is
 */
public record Takeoff(List<Line> lines, MixLine mix) {
  /** Copies the list. */
  public Takeoff {
    lines = List.copyOf(lines);
  }

  /**
   * What a plan takes, as its joints stand.
   *
   * @param sold the measures that plants sell by and that stakes are set by
   */
  public static Takeoff of(Layout layout, UnitSystem sold) {
    Numbering numbering = Numbering.of(layout.plan());
    List<Line> lines = new ArrayList<>(Concrete.of(layout, sold));
    lines.addAll(Stone.of(layout));
    lines.addAll(Forms.of(layout.plan(), numbering, sold));
    lines.addAll(JointWork.of(layout.plan(), numbering));
    lines.addAll(Surface.of(layout));
    return new Takeoff(lines, MixLine.of(layout.plan().mix()));
  }

  /** The lines of one item. */
  public List<Line> of(Item item) {
    return lines.stream().filter(l -> l.item() == item).toList();
  }
}
