package org.jointwright.drawing;

import java.util.List;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * Something drawn. Places and sizes are in the units of the medium, x to the right and y down:
 * pixels on the canvas, millimetres on a sheet. Whoever paints needs to know only these four.
 */
public sealed interface Mark {
  /**
   * A line.
   *
   * @param path where it runs
   * @param width its width
   * @param dashes lengths of dashes and gaps in turn, empty for a plain line
   */
  record Line(Path path, double width, List<Double> dashes, Role role) implements Mark {
    /** Copies the list. */
    public Line {
      dashes = List.copyOf(dashes);
    }

    /** A plain line. */
    public static Line of(Path path, double width, Role role) {
      return new Line(path, width, List.of(), role);
    }

    /** A plain straight line. */
    public static Line of(Point from, Point to, double width, Role role) {
      return of(Path.straight(from, to), width, role);
    }
  }

  /** A filled area; where rings lie in one another it is filled and empty in turn. */
  record Area(List<Ring> rings, Role role) implements Mark {
    /** Copies the list. */
    public Area {
      rings = List.copyOf(rings);
    }

    /** The inside of one ring. */
    public static Area of(Ring ring, Role role) {
      return new Area(List.of(ring), role);
    }
  }

  /**
   * A line of text.
   *
   * @param at where its anchor stands, on the baseline
   * @param text the text
   * @param size the size of the type
   * @param weight the weight of the type
   * @param anchor which point of it stands at {@code at}
   * @param angle degrees it is turned counter-clockwise as seen, about {@code at}
   * @param fraction how much larger a vulgar fraction is set, 1 for as the type has it
   */
  record Words(
      Point at,
      String text,
      double size,
      Weight weight,
      Anchor anchor,
      double angle,
      double fraction,
      Role role)
      implements Mark {
    /** Level text, fractions as the type has them. */
    public static Words level(
        Point at, String text, double size, Weight weight, Anchor anchor, Role role) {
      return new Words(at, text, size, weight, anchor, 0, 1, role);
    }
  }

  /**
   * Marks that belong together.
   *
   * @param name a plain name, used as the group's name in an SVG
   * @param title what the group is, for whoever reads the drawing by ear; may be empty
   */
  record Group(String name, String title, List<Mark> marks) implements Mark {
    /** Copies the list. */
    public Group {
      marks = List.copyOf(marks);
    }
  }
}
