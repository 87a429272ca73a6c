package org.jointwright.sheet.block;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Mark;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;

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

  /** The same, but a block that finds no room as a whole lets later ones pass. */
  private static List<Mark> packed(
      List<Block> blocks, Point at, double height, double width, List<Block> left) {
    List<Mark> marks = new ArrayList<>();
    List<Block> over = new ArrayList<>();
    double used = 0;
    for (Block block : blocks) {
      boolean first = over.isEmpty();
      List<Block> less = new ArrayList<>();
      if (first || block.height() <= height - used) {
        marks.addAll(column(List.of(block), at.x(), at.y() + used, height - used, width, less));
        used += less.isEmpty() ? block.height() + GAP : 0;
        used = first && !less.isEmpty() && !less.contains(block) ? height : used;
      } else {
        less.add(block);
      }
      over.addAll(less);
    }
    left.addAll(over);
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
   * Blocks on as many pages as they need, in their order; where that spares a page, with small ones
   * in the gaps that large ones leave at the foot of a column.
   *
   * @throws IllegalStateException when a block is higher than a page
   */
  public static List<List<Mark>> pages(List<Block> blocks, Box room) {
    List<List<Mark>> inOrder = pages(blocks, room, false);
    if (inOrder.size() < 2) {
      return inOrder;
    }
    List<List<Mark>> packed = pages(blocks, room, true);
    return packed.size() < inOrder.size() ? packed : inOrder;
  }

  private static List<List<Mark>> pages(List<Block> blocks, Box room, boolean packed) {
    List<List<Mark>> pages = new ArrayList<>();
    List<Block> rest = blocks;
    while (!rest.isEmpty()) {
      List<Block> more = new ArrayList<>();
      pages.add(page(rest, room, packed, more));
      if (more.size() == rest.size() && more.equals(rest)) {
        throw new IllegalStateException("a block is higher than a page: " + more.getFirst().name());
      }
      rest = more;
    }
    return pages;
  }

  /** Fills the columns of a page; blocks without room go to {@code left}. */
  public static List<Mark> page(List<Block> blocks, Box room, List<Block> left) {
    return page(blocks, room, false, left);
  }

  private static List<Mark> page(List<Block> blocks, Box room, boolean packed, List<Block> left) {
    List<Mark> marks = new ArrayList<>();
    double width = columnWidth(room);
    List<Block> rest = blocks;
    for (int c = 0; c < columns(room); c++) {
      List<Block> more = new ArrayList<>();
      double x = room.minX() + c * (width + BETWEEN);
      marks.addAll(
          packed
              ? packed(rest, new Point(x, room.minY()), room.height(), width, more)
              : column(rest, x, room.minY(), room.height(), width, more));
      rest = more;
    }
    left.addAll(rest);
    return marks;
  }
}
