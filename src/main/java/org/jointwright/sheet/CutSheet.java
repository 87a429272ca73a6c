package org.jointwright.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.drawing.Mark;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Box;
import org.jointwright.sheet.block.Block;
import org.jointwright.sheet.block.Flow;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.ListBlock;

/**
 * The crew's cut sheet: everything a finisher with a tape needs to set the forms' corners, snap
 * every joint and set every strip of filler.
 */
public final class CutSheet {
  /** Between the paper's edge and everything, millimetres. */
  static final double MARGIN = 10;

  private static final double COLUMN = ListBlock.WIDTH;
  private static final double GAP = 5.6;

  private final Facts facts;
  private final SheetOptions options;
  private final Schedule schedule;

  private CutSheet(Layout layout, SheetOptions options) {
    this.options = options;
    this.facts = Facts.of(layout, options);
    this.schedule = new Schedule(facts);
  }

  /** The pages of the cut sheet for a layout, one at least. */
  public static List<Page> of(Layout layout, SheetOptions options) {
    return new CutSheet(layout, options).pages();
  }

  /** The date a sheet of the plan carries: the job's, or else that of the options. */
  public static Optional<LocalDate> dateOf(Plan plan, SheetOptions options) {
    return Foot.dateOf(plan.job(), options);
  }

  /**
   * The column beside the plan; blocks without room go to {@code left}. Diagonals are told in
   * smaller figures where that spares a page.
   */
  private List<Mark> column(PlanOnPage plan, double x, double height, List<Block> left) {
    ColumnBlocks blocks = new ColumnBlocks(facts, plan.field().view().turn());
    List<Block> over = new ArrayList<>();
    List<Mark> large = Flow.column(blocks.of(plan.unplaced(), true), x, 10, height, COLUMN, over);
    if (over.isEmpty()) {
      return large;
    }
    List<Mark> small = Flow.column(blocks.of(plan.unplaced(), false), x, 10, height, COLUMN, left);
    if (left.isEmpty()) {
      return small;
    }
    left.clear();
    left.addAll(over);
    return large;
  }

  private List<Page> pages() {
    Paper paper = options.paper();
    double low = paper.height() - Foot.HEIGHT;
    double right = paper.width() - MARGIN;
    Bottom bottom = Bottom.of(facts, schedule, right - MARGIN);
    double fieldLow = low - bottom.height() - 3;
    Box field = new Box(MARGIN, 8, right - COLUMN - GAP, fieldLow);
    PlanOnPage plan = PlanOnPage.of(facts, field);

    List<Mark> first = new ArrayList<>(plan.marks());
    List<Block> left = new ArrayList<>();
    first.addAll(column(plan, right - COLUMN, fieldLow - 10, left));
    first.addAll(bottom.at(MARGIN, low - bottom.height()));
    List<Block> rest = new ArrayList<>(bottom.left());
    rest.addAll(left);

    List<List<Mark>> pages = new ArrayList<>();
    pages.add(first);
    while (!rest.isEmpty()) {
      List<Block> more = new ArrayList<>();
      pages.add(Flow.page(rest, new Box(MARGIN, 10, right, low - 4), more));
      if (more.size() == rest.size() && more.equals(rest)) {
        throw new IllegalStateException("a block is higher than a page: " + more.getFirst().name());
      }
      rest = more;
    }
    List<Page> out = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      List<Mark> marks = pages.get(i);
      marks.addAll(Foot.of(facts, options, plan.field().scale().label(), i + 1, pages.size()));
      String job = Lines.known(facts.plan().job().name());
      out.add(new Page(facts.say("cut.title"), facts.say("cut.description", job), paper, marks));
    }
    return out;
  }
}
