package org.jointwright.layout.search;

import java.util.List;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Laid;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * Places that people see and that joints like to meet: the ends of a garage door or a step, joints
 * that are there already beside the slab. Meeting them is the finisher's eye, not a rule: it is
 * worth a small share of the cost and never a broken panel.
 *
 * @param places where joints like to end
 */
public record Sights(List<Point> places) {
  /** Nothing to be seen. */
  public static final Sights NONE = new Sights(List.of());

  /** What meeting all of them saves, as a share of the cost: rules, Cost. */
  private static final double WORTH = 0.05;

  /** An end this near meets it, inches: the rules' inch for lines that go on, a shade inside. */
  private static final double MEET = 0.9;

  /** How far a joint is shifted at once to meet a place, inches. */
  private static final double SHIFT = 36;

  /** Copies the list. */
  public Sights {
    places = List.copyOf(places);
  }

  /** The share of the cost that a draft saves by what its joints meet. */
  double saving(Draft draft) {
    if (places.isEmpty()) {
      return 0;
    }
    long count = places.stream().filter(p -> isMet(draft, p)).count();
    return WORTH * count / places.size();
  }

  /** Whether a draft meets all of them. */
  boolean isAllMet(Draft draft) {
    return places.stream().allMatch(p -> isMet(draft, p));
  }

  /** The least share of its length that a draft can cost in the end. */
  double hope() {
    return places.isEmpty() ? 1 : 1 - WORTH;
  }

  /** The places within a shift of a joint that it does not meet. */
  List<Point> near(Edge path) {
    return places.stream()
        .filter(p -> path.distance(p) > MEET && path.distance(p) <= SHIFT)
        .toList();
  }

  private static boolean isMet(Draft draft, Point p) {
    for (Laid l : draft.lines()) {
      if (l.end(false).distance(p) <= MEET || l.end(true).distance(p) <= MEET) {
        return true;
      }
    }
    return false;
  }
}
