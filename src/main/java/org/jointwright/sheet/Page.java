package org.jointwright.sheet;

import java.util.List;
import org.jointwright.drawing.Mark;

/**
 * One page, ready to be painted.
 *
 * @param title what it is, for whoever reads it by ear
 * @param description what it shows
 * @param paper its size
 * @param marks what is on it, millimetres from the upper left corner
 */
public record Page(String title, String description, Paper paper, List<Mark> marks) {
  /** Copies the list. */
  public Page {
    marks = List.copyOf(marks);
  }
}
