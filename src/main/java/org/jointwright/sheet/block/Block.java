package org.jointwright.sheet.block;

import java.util.List;
import org.jointwright.drawing.Mark;

/** A piece of a page that flows: a table, a box-out's detail, a list. */
public interface Block {
  /** Its name as a group of the drawing. */
  String name();

  /** How high it is, millimetres, the gap after it not counted. */
  double height();

  /** Its marks with the upper left corner at the given place. */
  List<Mark> at(double x, double y, double width);

  /** The block without what fits into a height, or null when it goes whole or not at all. */
  default Split split(double height) {
    return height() <= height
        ? new Split(List.of(this), List.of())
        : new Split(List.of(), List.of(this));
  }

  /** What fits and what is left. */
  record Split(List<Block> fits, List<Block> left) {}
}
