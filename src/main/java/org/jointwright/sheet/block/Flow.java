package org.jointwright.sheet.block;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Mark;
import org.jointwright.shape.Box;

/** Lets blocks flow down a column, and down the columns of a page. */
public final class Flow {
  private static final double GAP = 4.5;
  private static final double BETWEEN = 4.8;

  /** The narrowest column that a table of joints stands in. */
  private static final double NARROWEST = 83.2;

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

  /** How many columns a page has: three on letter paper that lies. */
  private static int columns(Box room) {
    return Math.max(1, (int) ((room.width() + BETWEEN + 0.1) / (NARROWEST + BETWEEN)));
  }

  /** How wide a column of a page is, millimetres. */
  public static double columnWidth(Box room) {
    return (room.width() + BETWEEN) / columns(room) - BETWEEN;
  }

  /**
   * Blocks on as many pages as they need.
   *
   * @throws IllegalStateException when a block is higher than a page
   */
  public static List<List<Mark>> pages(List<Block> blocks, Box room) {
    List<List<Mark>> pages = new ArrayList<>();
    List<Block> rest = blocks;
    while (!rest.isEmpty()) {
      List<Block> more = new ArrayList<>();
      pages.add(page(rest, room, more));
      if (more.size() == rest.size() && more.equals(rest)) {
        throw new IllegalStateException("a block is higher than a page: " + more.getFirst().name());
      }
      rest = more;
    }
    return pages;
  }

  /** Fills the columns of a page; blocks without room go to {@code left}. */
  public static List<Mark> page(List<Block> blocks, Box room, List<Block> left) {
    List<Mark> marks = new ArrayList<>();
    double width = columnWidth(room);
    List<Block> rest = blocks;
    for (int c = 0; c < columns(room); c++) {
      List<Block> more = new ArrayList<>();
      double x = room.minX() + c * (width + BETWEEN);
      marks.addAll(column(rest, x, room.minY(), room.height(), width, more));
      rest = more;
    }
    left.addAll(rest);
    return marks;
  }
}
