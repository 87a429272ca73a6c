package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Mark;
import org.jointwright.joint.Layout;
import org.jointwright.shape.Box;
import org.jointwright.sheet.block.Block;
import org.jointwright.sheet.block.Flow;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.ListBlock;
import org.jointwright.sheet.page.Foot;
import org.jointwright.sheet.page.Ink;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.Scale;
import org.jointwright.sheet.page.Sheet;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.sheet.place.Field;

/**
 * The crew's cut sheet: everything a finisher with a tape needs to set the forms' corners, snap
 * every joint and set every strip of filler.
 */
public final class CutSheet {
  private static final double COLUMN = ListBlock.WIDTH;
  private static final double GAP = 5.6;

  private final Facts facts;
  private final Schedule schedule;
  private final Paper paper;

  private CutSheet(Facts facts, Paper paper) {
    this.facts = facts;
    this.schedule = new Schedule(facts);
    this.paper = paper;
  }

  /** The numbered pages of the cut sheet for a layout, one at least. */
  public static List<Page> of(Layout layout, SheetOptions options) {
    return SheetSet.of(List.of(sheet(layout, options)), layout.plan().job(), options).pages();
  }

  /**
   * The cut sheet for a layout, on paper that lies; on paper that stands where that draws the plan
   * larger and takes no more pages.
   */
  public static Sheet sheet(Layout layout, SheetOptions options) {
    Facts facts = Facts.of(layout, options);
    CutSheet lying = new CutSheet(facts, options.paper());
    CutSheet standing = new CutSheet(facts, options.paper().turned());
    Drawn lies = lying.drawn();
    if (standing.largest().ratio() >= lies.plan().field().scale().ratio()) {
      return lying.sheet(lies);
    }
    Drawn stands = standing.drawn();
    boolean better =
        stands.plan().field().scale().ratio() < lies.plan().field().scale().ratio()
            && stands.plan().loss() <= lies.plan().loss()
            && stands.leaves().size() <= lies.leaves().size();
    return better ? standing.sheet(stands) : lying.sheet(lies);
  }

  /** The plan as it lies on the first page, and all pages. */
  private record Drawn(PlanOnPage plan, List<List<Mark>> leaves) {}

  private Sheet sheet(Drawn drawn) {
    return new Sheet(
        facts.say("cut.title"),
        facts.say("cut.description", Lines.known(facts.plan().job().name())),
        paper,
        Ink.BLACK,
        drawn.plan().field().scale().label(),
        drawn.leaves());
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

  private double low() {
    return paper.height() - Foot.height(paper);
  }

  private double right() {
    return paper.width() - Foot.MARGIN;
  }

  private Bottom bottom() {
    return Bottom.of(facts, schedule, right() - Foot.MARGIN, paper.height());
  }

  /** Where the plan lies above what stands under it. */
  private Box field(Bottom bottom) {
    return new Box(Foot.MARGIN, 8, right() - COLUMN - GAP, low() - bottom.height() - 3);
  }

  /** The largest scale at which the plan lies on this paper. */
  private Scale largest() {
    return Field.of(facts.layout(), facts.words().units(), field(bottom())).getFirst().scale();
  }

  private Drawn drawn() {
    Bottom bottom = bottom();
    Box field = field(bottom);
    PlanOnPage plan = PlanOnPage.of(facts, field);
    List<Mark> first = new ArrayList<>(plan.marks());
    List<Block> left = new ArrayList<>();
    first.addAll(column(plan, right() - COLUMN, field.maxY() - 10, left));
    first.addAll(bottom.at(Foot.MARGIN, low() - bottom.height()));
    List<Block> rest = new ArrayList<>(bottom.left());
    rest.addAll(left);
    List<List<Mark>> pages = new ArrayList<>(List.of(first));
    pages.addAll(Flow.pages(rest, new Box(Foot.MARGIN, 10, right(), low() - 4)));
    return new Drawn(plan, pages);
  }
}
