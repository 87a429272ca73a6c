package org.jointwright.layout.piece;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Mirror;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * Two half lines from one point: the first two arms of a Y, or a line that bends where another
 * meets it. What it cuts keeps an inside corner at the bend, which the next cut serves. Places are
 * inches from the bend, negative along the first arm.
 *
 * @param bend where the arms meet
 * @param first the unit direction of the first arm, away from the bend
 * @param second the unit direction of the second
 */
public record Bent(Point bend, Point first, Point second) implements Carrier {
  /** Through two points by way of a third. */
  public static Bent through(Point a, Point bend, Point b) {
    return new Bent(bend, a.minus(bend).unit(), b.minus(bend).unit());
  }

  /** The line of one arm, its places growing away from the bend. */
  Line arm(boolean last) {
    return new Line(bend, last ? second : first);
  }

  @Override
  public double place(Point p) {
    double one = arm(false).place(p);
    double two = arm(true).place(p);
    boolean onFirst = two <= 0 || (one > 0 && arm(false).distance(p) < arm(true).distance(p));
    return onFirst ? -Math.max(0, one) : two;
  }

  @Override
  public Point at(double place) {
    return place < 0 ? bend.plus(first.times(-place)) : bend.plus(second.times(place));
  }

  @Override
  public Point direction(double place) {
    return place < 0 ? first.times(-1) : second;
  }

  @Override
  public double perInch() {
    return 1;
  }

  /** {@inheritDoc} Both ends must be on one arm. */
  @Override
  public Edge edge(Point from, Point to) {
    return new Segment(from, to);
  }

  @Override
  public List<Crossing> crossings(Edge edge) {
    List<Crossing> found = new ArrayList<>();
    for (Crossing c : arm(false).crossings(edge)) {
      if (c.place() > END) {
        found.add(new Crossing(-c.place(), c.share()));
      }
    }
    for (Crossing c : arm(true).crossings(edge)) {
      if (c.place() > END) {
        found.add(c);
      }
    }
    return found;
  }

  @Override
  public Bent shifted(double inches) {
    Point along = second.minus(first);
    Point side = along.norm() < 1e-9 ? second.left() : along.unit().left();
    return moved(side.times(inches));
  }

  @Override
  public Bent mirrored(Mirror mirror) {
    return new Bent(mirror.of(bend), mirror.turned(first), mirror.turned(second));
  }

  /** The same arms from another point. */
  public Bent moved(Point by) {
    return new Bent(bend.plus(by), first, second);
  }
}
