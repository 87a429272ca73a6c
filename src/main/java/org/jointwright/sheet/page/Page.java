package org.jointwright.sheet.page;

import java.util.List;
import org.jointwright.drawing.Mark;

/**
 * One page, ready to be painted.
 *
 * @param title what it is, for whoever reads it by ear
 * @param description what it shows
 * @param paper its size
 * @param ink the colours it is printed in
 * @param marks what is on it, millimetres from the upper left corner
 */
public record Page(String title, String description, Paper paper, Ink ink, List<Mark> marks) {
  /** Copies the list. */
  public Page {
    marks = List.copyOf(marks);
  }

  /** A page in black. */
  public Page(String title, String description, Paper paper, List<Mark> marks) {
    this(title, description, paper, Ink.BLACK, marks);
  }
}
