package org.jointwright.app;

import java.util.List;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.judge.Checks;
import org.jointwright.file.LayoutWriter;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.text.Words;

/**
 * A layout and what the rules say of it.
 *
 * @param layout the plan and its panels
 * @param judgement what every rule found
 */
public record Answer(Layout layout, Judgement judgement) {
  /** The joints of a plan laid anew. */
  public static Answer laid(Plan plan) {
    Layout layout = LayoutEngine.lay(plan);
    return new Answer(layout, Checks.judge(plan, layout));
  }

  /** The joints of a plan as they stand in it. */
  public static Answer asItStands(Plan plan) {
    Layout layout = Layouts.of(plan);
    return new Answer(layout, Checks.judge(layout));
  }

  /** The plan with its joints. */
  public Plan plan() {
    return layout.plan();
  }

  /** What the rules found, by slab, then by rule. */
  public List<Finding> findings() {
    return judgement.findings();
  }

  /** The layout output, its findings in English and in the plan's own measures. */
  public String json() {
    Words words = Words.english(UnitSystem.of(plan().unit()));
    return LayoutWriter.write(layout, findings(), words);
  }
}
