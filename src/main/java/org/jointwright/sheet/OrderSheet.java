package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.sheet.block.AmountsBlock;
import org.jointwright.sheet.block.Block;
import org.jointwright.sheet.block.Flow;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.Type;
import org.jointwright.sheet.page.Caution;
import org.jointwright.sheet.page.Foot;
import org.jointwright.sheet.page.Ink;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.Sheet;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.takeoff.Item;
import org.jointwright.takeoff.Line;
import org.jointwright.takeoff.Takeoff;
import org.jointwright.takeoff.words.OrderWords;
import org.jointwright.text.Words;

/**
 * The order sheet: what the dispatcher is told in one breath, all else that is bought, and, where
 * it is wished for, on the pages after it how each figure was worked out.
 */
public final class OrderSheet {
  /** Where what is agreed with the plant is filled in, at the least, and how much room it takes. */
  private static final double FILLED_IN = 40;

  private static final double AGREED = 14;

  private final Plan plan;
  private final Takeoff takeoff;
  private final SheetOptions options;
  private final Words words;
  private final OrderWords said;
  private double filledIn = FILLED_IN;

  private OrderSheet(Plan plan, Takeoff takeoff, SheetOptions options) {
    this.plan = plan;
    this.takeoff = takeoff;
    this.options = options;
    this.words = options.words();
    this.said = new OrderWords(words);
  }

  /** The numbered pages of the order sheet. */
  public static List<Page> of(Plan plan, Takeoff takeoff, SheetOptions options) {
    return SheetSet.of(List.of(sheet(plan, takeoff, options)), plan.job(), options).pages();
  }

  /** The order sheet. */
  public static Sheet sheet(Plan plan, Takeoff takeoff, SheetOptions options) {
    return new OrderSheet(plan, takeoff, options).sheet();
  }

  private Sheet sheet() {
    Paper paper = options.paper().laidOut();
    double right = paper.width() - Foot.MARGIN;
    double low = paper.height() - Foot.height(paper) - 4;
    List<String> cautions = cautions(right - Foot.MARGIN);
    double notes = low - cautions.size() * 4.8;
    List<List<Mark>> pages = new ArrayList<>();
    List<Mark> first = new ArrayList<>(band(right));
    List<Block> left = new ArrayList<>();
    Box room = new Box(Foot.MARGIN, filledIn + AGREED, right, notes - 3);
    first.addAll(Flow.page(blocks(false, Flow.columnWidth(room)), room, left));
    List<Mark> told = new ArrayList<>();
    for (int i = 0; i < cautions.size(); i++) {
      told.add(Type.NOTE.at(Foot.MARGIN, notes + 3.4 + i * 4.8, cautions.get(i), Anchor.START));
    }
    first.add(new Mark.Group("cautions", "", told));
    pages.add(first);
    Box whole = new Box(Foot.MARGIN, 10, right, low);
    List<Block> rest = new ArrayList<>(left);
    if (options.how()) {
      rest.addAll(blocks(true, Flow.columnWidth(whole)));
    }
    pages.addAll(Flow.pages(rest, whole));
    return new Sheet(
        words.say("sheet.order.title"),
        words.say("sheet.order.description", Lines.known(plan.job().name())),
        paper,
        Ink.BLACK,
        "",
        pages);
  }

  /** How much, of what, and what is agreed with the plant by hand. */
  private List<Mark> band(double right) {
    List<Mark> marks = new ArrayList<>();
    double x = Foot.MARGIN;
    Line concrete = takeoff.of(Item.CONCRETE).getFirst();
    Line loads = takeoff.of(Item.LOADS).getFirst();
    marks.add(Type.HEAD.at(x, 14, words.say("sheet.order.concrete"), Anchor.START));
    marks.add(Type.TITLE.at(x, 24.5, said.amount(concrete), Anchor.START));
    marks.add(
        Type.TABLE.at(x, 32, words.say("sheet.order.loads", loads.amount().value()), Anchor.START));
    double from = x + 62;
    double y = 14;
    for (String line : Lines.wrap(said.mix(takeoff.mix()), Type.MARK_TIGHT, right - from)) {
      marks.add(Type.MARK_TIGHT.at(from, y, line, Anchor.START));
      y += 6.2;
    }
    for (String text : List.of(said.meant(takeoff.mix()), Lines.known(said.colors(takeoff)))) {
      for (String line :
          text.isEmpty() ? List.<String>of() : Lines.wrap(text, Type.TABLE, right - from)) {
        marks.add(Type.TABLE.at(from, y, line, Anchor.START));
        y += 5.7;
      }
    }
    filledIn = Math.max(FILLED_IN, y + 1);
    double each = (right - x) / 4;
    for (int i = 0; i < 4; i++) {
      String key = List.of("plant", "day", "interval", "ownNumber").get(i);
      double at = x + i * each;
      marks.add(Type.NOTE.at(at, filledIn, words.say("sheet.order." + key), Anchor.START));
      double line = filledIn + 10;
      marks.add(Mark.Line.of(new Point(at, line), new Point(at + each - 5, line), 0.25, Role.RULE));
    }
    return List.of(new Mark.Group("concrete", "", marks));
  }

  private List<Block> blocks(boolean how, double width) {
    List<Block> blocks = new ArrayList<>();
    for (Item.Group group : Item.Group.values()) {
      List<AmountsBlock.Row> rows =
          takeoff.lines().stream()
              .filter(l -> l.item().group() == group)
              .map(l -> row(l, how))
              .toList();
      if (!rows.isEmpty()) {
        String title = said.group(group);
        blocks.add(
            new AmountsBlock(
                (how ? "how-" : "order-") + group.name().toLowerCase(java.util.Locale.ROOT),
                how ? words.say("sheet.order.how", title) : title,
                words.say("sheet.order.continued", title),
                width,
                rows));
      }
    }
    return blocks;
  }

  private AmountsBlock.Row row(Line line, boolean how) {
    List<String> steps = new ArrayList<>();
    if (how) {
      steps.addAll(said.how(line));
      String sources = said.sources(line);
      if (!sources.isEmpty()) {
        steps.add(words.say("sheet.order.source", sources));
      }
    }
    return new AmountsBlock.Row(Lines.known(said.name(line)), said.amount(line), steps);
  }

  private List<String> cautions(double width) {
    List<String> lines = new ArrayList<>();
    for (String said : Caution.say(words, plan, Caution.WET, Caution.MIX)) {
      lines.addAll(Lines.wrap(said, Type.NOTE, width));
    }
    return lines;
  }
}
