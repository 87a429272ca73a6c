package org.jointwright.app;

import org.jointwright.file.LayoutWriter;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.plan.Plan;

/**
 * A layout and what there is to say about it.
 *
 * @param layout the plan and its panels
 */
public record Answer(Layout layout) {
  /** The joints of a plan laid anew. */
  public static Answer laid(Plan plan) {
    return new Answer(LayoutEngine.lay(plan));
  }

  /** The joints of a plan as they stand in it. */
  public static Answer asItStands(Plan plan) {
    return new Answer(Layouts.of(plan));
  }

  /** The plan with its joints. */
  public Plan plan() {
    return layout.plan();
  }

  /** The layout output. */
  public String json() {
    return LayoutWriter.write(layout);
  }
}
