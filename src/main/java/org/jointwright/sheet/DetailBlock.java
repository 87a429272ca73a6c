package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.joint.Layout;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.sheet.block.Block;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.Type;
import org.jointwright.sheet.place.Field;

/** A slab that is too crowded on the plan, drawn by itself at a scale of its own. */
final class DetailBlock implements Block {
  private static final double WIDTH = 83.2;
  private static final double HEAD = 7;
  private static final double HEIGHT = 82;

  /** A detail is worth its page where it is drawn larger than the plan by this at least. */
  private static final double LARGER = 1.4;

  private static final Box ROOM = new Box(0, HEAD, WIDTH, HEIGHT);

  private final Facts facts;
  private final String slab;
  private final int number;
  private final double turn;

  /**
   * @param turn how the plan lies that it is a detail of, degrees
   */
  DetailBlock(Facts facts, String slab, int number, double turn) {
    this.turn = turn;
    this.facts = facts.only(slab);
    this.slab = slab;
    this.number = number;
  }

  /** Whether a detail of the slab would be drawn much larger than a plan of that scale. */
  static boolean isLarger(Facts facts, String slab, Field plan) {
    Layout alone = facts.only(slab).layout();
    Field own = Field.of(alone, facts.scales(), ROOM, plan.view().turn()).getFirst();
    return own.scale().ratio() * LARGER <= plan.scale().ratio();
  }

  /** The sides whose chains find no place in the slab's detail either. */
  static List<Chains.Chain> unplaced(Facts facts, String slab, double turn) {
    return PlanOnPage.detail(facts.only(slab), ROOM, turn).unplaced();
  }

  @Override
  public String name() {
    return "detail-" + number;
  }

  @Override
  public double height() {
    return HEIGHT;
  }

  @Override
  public List<Mark> at(double x, double y, double width) {
    PlanOnPage plan =
        PlanOnPage.detail(
            facts,
            new Box(x + ROOM.minX(), y + ROOM.minY(), x + ROOM.maxX(), y + ROOM.maxY()),
            turn);
    String scale = plan.field().scale().label();
    double right = x + WIDTH;
    String title = facts.say("detail.title", String.valueOf(number), slab);
    double room = WIDTH - Type.NOTE.width(scale) - 3;
    List<Mark> marks = new ArrayList<>();
    marks.add(Type.HEAD.at(x, y + 3.6, Lines.fitting(title, Type.HEAD, room), Anchor.START));
    marks.add(Type.NOTE.at(right, y + 3.6, scale, Anchor.END));
    marks.add(Mark.Line.of(new Point(x, y + 5.5), new Point(right, y + 5.5), 0.5, Role.RULE));
    marks.addAll(plan.marks());
    return marks;
  }
}
