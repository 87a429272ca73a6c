package org.jointwright.check.face;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jointwright.practice.Corners;
import org.jointwright.practice.Tolerance;

/**
 * A closed round of a panel's sides, the panel on the left; the outer edge, or the rim of a hole.
 */
public final class Loop {
  private static final double ROUNDED_OFF =
      Corners.ROUNDED_OFF.value().inches() - Tolerance.LENGTH_INCHES;

  private final List<Step> steps;
  private final double[] turns;

  Loop(List<Step> steps) {
    this.steps = List.copyOf(steps);
    turns = new double[steps.size()];
    for (int i = 0; i < turns.length; i++) {
      turns[i] = Turn.degrees(step(i - 1).edge(), step(i).edge());
    }
  }

  /** Its sides in order. */
  public List<Step> steps() {
    return steps;
  }

  /** How many sides it has. */
  public int size() {
    return steps.size();
  }

  /** A side by its number, counted round and round. */
  public Step step(int i) {
    return steps.get(Math.floorMod(i, steps.size()));
  }

  /** The turn where step {@code i} begins, degrees, to the left positive. */
  public double turn(int i) {
    return turns[Math.floorMod(i, turns.length)];
  }

  /** Whether a step is a concave arc so tight that it is a corner with its edge rounded off. */
  private boolean rounded(Step step) {
    return step.edge() instanceof org.jointwright.shape.Arc arc
        && step.bend() < 0
        && arc.radius() < ROUNDED_OFF;
  }

  /** Its corners in order; a place in a straight run is a corner of 180 degrees. */
  public List<Knot> knots() {
    int n = size();
    int start =
        IntStream.range(0, n)
            .filter(i -> step(i - 1).length() > Tolerance.LENGTH_INCHES && !rounded(step(i - 1)))
            .findFirst()
            .orElse(0);
    List<Knot> knots = new ArrayList<>();
    for (int done = 0; done < n; done += knots.getLast().count()) {
      knots.add(knot(start + done, n - done));
    }
    return knots;
  }

  private Knot knot(int first, int most) {
    double turn = turn(first);
    double apart = 0;
    int count = 1;
    while (count < most) {
      Step between = step(first + count - 1);
      if (!rounded(between)) {
        apart += between.length();
        if (apart > Tolerance.LENGTH_INCHES) {
          break;
        }
      }
      turn += between.bend() + turn(first + count);
      count++;
    }
    return new Knot(step(first).edge().start(), 180 - turn, Math.floorMod(first, size()), count);
  }

  /** Whether every side that meets in a corner is an edge of the concrete: no joint splits it. */
  public boolean isWhole(Knot knot) {
    return IntStream.rangeClosed(-1, knot.count() - 1).allMatch(k -> step(knot.first() + k).hard());
  }

  /** Whether every side that meets in a corner is one of the slab's outline. */
  public boolean isOnOutline(Knot knot) {
    return IntStream.rangeClosed(-1, knot.count() - 1)
        .allMatch(
            k -> step(knot.first() + k).source() instanceof org.jointwright.joint.Source.OnOutline);
  }
}
