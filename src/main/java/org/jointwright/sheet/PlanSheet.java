package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Mark;
import org.jointwright.shape.Box;
import org.jointwright.sheet.block.Block;
import org.jointwright.sheet.block.Flow;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.ListBlock;
import org.jointwright.sheet.page.Enlarged;
import org.jointwright.sheet.page.Foot;
import org.jointwright.sheet.page.Ink;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.Scale;
import org.jointwright.sheet.page.Sheet;
import org.jointwright.sheet.place.Field;

/**
 * A sheet with the plan to scale, a column of lists beside it, and tables and sentences below.
 *
 * @param facts what it tells
 * @param key the words of its title and description, {@code "cut"} or {@code "forms"}
 * @param sides whether the column lists every side, or only those with marks on them
 * @param largest whether lists on a page of their own are set as large as the page allows
 * @param under what stands under the plan
 */
record PlanSheet(Facts facts, String key, boolean sides, boolean largest, Under under) {
  private static final double COLUMN = ListBlock.WIDTH;
  private static final double GAP = 5.6;

  /** The widest list, millimetres. */
  private static final double LIST = FormRows.WIDEST;

  /** How much larger the type of lists on a page of their own may be: figures of 5 mm. */
  private static final double[] LARGER = {1.43, 1.25};

  /** How much worse the plan may be drawn for a second column; see {@link PlanOnPage#loss}. */
  private static final double WORSE = 6;

  /** Makes what stands under the plan. */
  interface Under {
    /**
     * What stands under the plan.
     *
     * @param width how wide it may be, millimetres
     * @param paper how high the paper is, millimetres
     */
    Bottom of(double width, double paper);
  }

  /**
   * The sheet on paper that lies; on paper that stands where that draws the plan larger and takes
   * no more pages.
   */
  Sheet on(Paper lying) {
    Try lies = new Try(lying);
    Drawn lain = lies.drawn();
    Try stands = new Try(lying.turned());
    if (stands.largest().ratio() >= lain.plan().field().scale().ratio()) {
      return lies.sheet(lain);
    }
    Drawn stood = stands.drawn();
    boolean better =
        stood.plan().field().scale().ratio() < lain.plan().field().scale().ratio()
            && stood.plan().loss() <= lain.plan().loss()
            && stood.leaves().size() <= lain.leaves().size();
    return better ? stands.sheet(stood) : lies.sheet(lain);
  }

  /** The plan as it lies on the first page, and all pages. */
  private record Drawn(PlanOnPage plan, List<List<Mark>> leaves) {}

  /** The sheet on paper that lies or stands. */
  private final class Try {
    private final Paper paper;
    private final Bottom bottom;
    private List<Block> spared = List.of();

    Try(Paper paper) {
      this.paper = paper;
      this.bottom = under.of(right() - Foot.MARGIN, paper.height());
    }

    Sheet sheet(Drawn drawn) {
      return new Sheet(
          facts.say(key + ".title"),
          facts.say(key + ".description", Lines.known(facts.plan().job().name())),
          paper,
          Ink.BLACK,
          drawn.plan().field().scale().label(),
          drawn.leaves());
    }

    private double low() {
      return paper.height() - Foot.height(paper);
    }

    private double right() {
      return paper.width() - Foot.MARGIN;
    }

    /** Where the plan lies above what stands under it, beside so many columns. */
    private Box field(int columns) {
      double side = right() - columns * (COLUMN + GAP);
      return new Box(Foot.MARGIN, 8, side, low() - bottom.height() - 3);
    }

    /** The largest scale at which the plan lies on this paper. */
    Scale largest() {
      return Field.of(facts.layout(), facts.scales(), field(1)).getFirst().scale();
    }

    /** With two columns where these spare a page and the plan is drawn no smaller for them. */
    Drawn drawn() {
      Drawn one = drawn(1);
      int spare = one.plan().details().isEmpty() && bottom.left().isEmpty() ? 1 : 2;
      if (one.leaves().size() <= spare || !one.plan().parts().windows().isEmpty()) {
        return one;
      }
      List<Block> before = spared;
      Drawn two = drawn(2);
      boolean better =
          two.leaves().size() < one.leaves().size()
              && two.plan().field().scale().ratio() <= one.plan().field().scale().ratio()
              && two.plan().loss() < one.plan().loss() + WORSE;
      spared = better ? spared : before;
      return better ? two : one;
    }

    private Drawn drawn(int columns) {
      Box field = field(columns);
      Box whole = new Box(Foot.MARGIN, 10, right(), low() - 4);
      PlanOnPage plan = PlanOnPage.of(facts, field, whole);
      List<Mark> first = new ArrayList<>(plan.marks());
      List<Block> left = new ArrayList<>();
      first.addAll(columns(plan, columns, field.maxY() - 10, left));
      first.addAll(bottom.at(Foot.MARGIN, low() - bottom.height()));
      List<Block> rest = new ArrayList<>();
      for (int i = 0; i < plan.details().size(); i++) {
        rest.add(new DetailBlock(facts, plan.details().get(i), i + 1, plan.field().view().turn()));
      }
      rest.addAll(bottom.left());
      rest.addAll(left);
      List<List<Mark>> pages = new ArrayList<>(List.of(first));
      pages.addAll(plan.parts().pages(facts, plan.field().view().turn(), whole));
      pages.addAll(lists(withSpared(rest, whole), whole));
      return new Drawn(plan, pages);
    }

    /** The rest, with the marks on joints where they cost no page of their own. */
    private List<Block> withSpared(List<Block> rest, Box whole) {
      List<Block> more = new ArrayList<>(rest);
      more.addAll(spared);
      return Flow.pages(more, whole).size() > Flow.pages(rest, whole).size() ? rest : more;
    }

    /** Lists on pages of their own, in larger type where that takes no more pages. */
    private List<List<Mark>> lists(List<Block> rest, Box whole) {
      List<List<Mark>> usual = Flow.pages(rest, whole);
      // A detail is to scale.
      boolean fixed = !largest || rest.stream().anyMatch(DetailBlock.class::isInstance);
      for (double times : fixed ? new double[0] : LARGER) {
        Box room =
            new Box(
                whole.minX() / times,
                whole.minY() / times,
                whole.maxX() / times,
                whole.maxY() / times);
        if (rest.stream().allMatch(b -> b.height() < room.height())
            && Flow.columnWidth(room) >= LIST) {
          List<List<Mark>> larger = Flow.pages(rest, room);
          if (larger.size() == usual.size()) {
            return larger.stream().map(p -> Enlarged.of(p, times)).toList();
          }
        }
      }
      return usual;
    }

    /**
     * The columns beside the plan; blocks without room go to {@code left}. Where that spares a
     * page, diagonals are told in smaller figures, and marks on joints in the rows of the joints
     * only.
     */
    private List<Mark> columns(PlanOnPage plan, int count, double height, List<Block> left) {
      ColumnBlocks blocks = new ColumnBlocks(facts, plan.field().view().turn(), sides);
      for (boolean tees : new boolean[] {true, false}) {
        for (boolean large : new boolean[] {true, false}) {
          List<Block> over = new ArrayList<>();
          List<Mark> marks = filled(blocks.of(plan.unplaced(), large, tees), count, height, over);
          if (over.isEmpty()) {
            spared = tees ? List.of() : blocks.tees();
            return marks;
          }
        }
      }
      spared = List.of();
      return filled(blocks.of(plan.unplaced(), true, true), count, height, left);
    }

    private List<Mark> filled(List<Block> blocks, int count, double height, List<Block> left) {
      List<Mark> marks = new ArrayList<>();
      List<Block> rest = blocks;
      for (int i = count - 1; i >= 0; i--) {
        List<Block> over = new ArrayList<>();
        double x = right() - COLUMN - i * (COLUMN + GAP);
        marks.addAll(Flow.column(rest, x, 10, height, COLUMN, over));
        rest = over;
      }
      left.addAll(rest);
      return marks;
    }
  }
}
