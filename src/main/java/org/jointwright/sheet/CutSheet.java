package org.jointwright.sheet;

import java.util.List;
import org.jointwright.joint.Layout;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Sheet;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.sheet.page.SheetSet;

/**
 * The crew's cut sheet: everything a finisher with a tape needs to set the forms' corners, snap
 * every joint and set every strip of filler.
 */
public final class CutSheet {
  private CutSheet() {}

  /** The numbered pages of the cut sheet for a layout, one at least. */
  public static List<Page> of(Layout layout, SheetOptions options) {
    return SheetSet.of(List.of(sheet(layout, options)), layout.plan().job(), options).pages();
  }

  /** The cut sheet for a layout. */
  public static Sheet sheet(Layout layout, SheetOptions options) {
    Facts facts = Facts.of(layout, options);
    Schedule schedule = new Schedule(facts);
    return new PlanSheet(
            facts, "cut", true, false, (width, paper) -> Bottom.of(facts, schedule, width, paper))
        .on(options.paper().laidOut());
  }
}
