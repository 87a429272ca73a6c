package org.jointwright.sheet.block;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Mark;
import org.jointwright.shape.Box;

/** Lets blocks flow down a column, and down the columns of a page. */
public final class Flow {
  private static final double GAP = 4.5;
  private static final double BETWEEN = 4.8;

  private Flow() {}

  /** Fills a column; blocks without room go to {@code left}, in their order. */
  public static List<Mark> column(
      List<Block> blocks, double x, double y, double height, double width, List<Block> left) {
    List<Mark> marks = new ArrayList<>();
    double used = 0;
    for (int i = 0; i < blocks.size(); i++) {
      Block.Split split = blocks.get(i).split(height - used);
      for (Block b : split.fits()) {
        marks.add(new Mark.Group(b.name(), "", b.at(x, y + used, width)));
        used += b.height() + GAP;
      }
      if (!split.left().isEmpty()) {
        left.addAll(split.left());
        left.addAll(blocks.subList(i + 1, blocks.size()));
        break;
      }
    }
    return marks;
  }

  /** Fills the three columns of a page; blocks without room go to {@code left}. */
  public static List<Mark> page(List<Block> blocks, Box room, List<Block> left) {
    List<Mark> marks = new ArrayList<>();
    double width = (room.width() - 2 * BETWEEN) / 3;
    List<Block> rest = blocks;
    for (int c = 0; c < 3; c++) {
      List<Block> more = new ArrayList<>();
      double x = room.minX() + c * (width + BETWEEN);
      marks.addAll(column(rest, x, room.minY(), room.height(), width, more));
      rest = more;
    }
    left.addAll(rest);
    return marks;
  }
}
