package org.jointwright.check.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jointwright.check.face.Face;
import org.jointwright.joint.Source;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * Where contraction joints end on each other: tees and Ys.
 *
 * <p>A meeting is judged where it is, so that a through joint given in two pieces hides nothing.
 * Places within 1 in of each other are one meeting. A meeting at an edge, a box-out, or at a joint
 * of another kind is neither.
 */
public final class Meetings {
  private static final double TOGETHER = Tolerance.LINE_UP.value().inches();
  private static final double THROUGH = -Math.cos(Math.toRadians(Angles.THROUGH.value()));

  /** A stem leaves the through joint by more than this, else it runs along it, degrees. */
  private static final double ASIDE = Math.sin(Math.toRadians(10));

  /**
   * A tee or a Y.
   *
   * @param at where it is
   * @param joint the joint that ends there; for a Y one of the three
   * @param isY whether it is a Y
   */
  public record Meeting(Point at, String joint, boolean isY) {}

  /** A piece of contraction joint that leaves a place. */
  private record Branch(Point from, Point to, Point heading, String joint) {}

  private final Map<Point, List<Branch>> leaving = new LinkedHashMap<>();
  private final Set<Point> other = new HashSet<>();
  private final List<Meeting> found = new ArrayList<>();
  private final Set<Point> ys = new HashSet<>();

  private Meetings(List<Face> faces, Set<String> contraction) {
    Set<List<Point>> seen = new HashSet<>();
    for (Face face : faces) {
      face.steps()
          .forEach(
              s -> {
                Edge e = s.edge();
                if (!s.hard()
                    && s.source() instanceof Source.OnJoint j
                    && contraction.contains(j.joint())) {
                  if (seen.add(List.of(e.start(), e.end(), tenths(e)))
                      && !seen.contains(List.of(e.end(), e.start(), tenths(e)))) {
                    add(e, j.joint());
                    add(e.reversed(), j.joint());
                  }
                } else {
                  other.add(e.start());
                  other.add(e.end());
                }
              });
    }
  }

  /** Tells two pieces between the same places apart, to a tenth of an inch. */
  private static Point tenths(Edge e) {
    Point m = e.at(0.5);
    return new Point(Math.rint(m.x() * 10), Math.rint(m.y() * 10));
  }

  private void add(Edge e, String joint) {
    leaving
        .computeIfAbsent(e.start(), k -> new ArrayList<>())
        .add(new Branch(e.start(), e.end(), e.direction(0), joint));
  }

  /** The tees and Ys, from left to right. */
  static List<Meeting> of(List<Face> faces, Set<String> contraction) {
    Meetings meetings = new Meetings(faces, contraction);
    List<Point> places = new ArrayList<>(meetings.leaving.keySet());
    places.sort(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y));
    for (int i = 0; i < places.size(); i++) {
      meetings.judge(places.get(i), near(places, i));
    }
    return List.copyOf(meetings.found);
  }

  /** The places that are one with place {@code i}, itself among them, in their order. */
  private static List<Point> near(List<Point> places, int i) {
    Point place = places.get(i);
    int from = i;
    while (from > 0 && place.x() - places.get(from - 1).x() <= TOGETHER) {
      from--;
    }
    int to = i + 1;
    while (to < places.size() && places.get(to).x() - place.x() <= TOGETHER) {
      to++;
    }
    return places.subList(from, to).stream().filter(p -> p.distance(place) <= TOGETHER).toList();
  }

  private void judge(Point place, List<Point> near) {
    if (near.stream().anyMatch(other::contains)) {
      return;
    }
    List<Branch> branches =
        near.stream()
            .flatMap(p -> leaving.getOrDefault(p, List.of()).stream())
            .filter(b -> !near.contains(b.to()))
            .toList();
    if (branches.size() == 3 && near.stream().noneMatch(ys::contains) && isY(branches)) {
      found.add(new Meeting(place, branches.getFirst().joint(), /* isY= */ true));
      ys.addAll(near);
    }
    List<Branch> straightest = straightest(branches);
    for (Branch stem : branches) {
      // At a flat angle each of three might pass for the stem: the two most in line are not.
      if (stem.from().equals(place) && !straightest.contains(stem) && isStem(stem, branches)) {
        found.add(new Meeting(place, stem.joint(), /* isY= */ false));
      }
    }
  }

  private static boolean isY(List<Branch> three) {
    for (int i = 0; i < 3; i++) {
      if (runOn(three.get(i), three.get((i + 1) % 3))) {
        return false;
      }
    }
    return true;
  }

  /** Whether one branch goes on from the other: in one line, or as one bent joint. */
  private static boolean runOn(Branch a, Branch b) {
    double dot = a.heading().dot(b.heading());
    return dot < THROUGH || (dot < 0 && a.joint().equals(b.joint()) && a.from().equals(b.from()));
  }

  /** The two branches that run on most straightly; none where no two do. */
  private static List<Branch> straightest(List<Branch> branches) {
    List<Branch> best = List.of();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < branches.size(); i++) {
      for (int k = i + 1; k < branches.size(); k++) {
        Branch a = branches.get(i);
        Branch b = branches.get(k);
        double dot = a.heading().dot(b.heading());
        if (runOn(a, b) && dot < least) {
          least = dot;
          best = List.of(a, b);
        }
      }
    }
    return best;
  }

  /** Whether a branch ends on two others that run through, and none goes on beyond them. */
  private static boolean isStem(Branch stem, List<Branch> all) {
    List<Branch> rest = all.stream().filter(b -> !b.equals(stem)).toList();
    double straightest = Double.POSITIVE_INFINITY;
    Branch through = stem;
    Branch onward = stem;
    for (int i = 0; i < rest.size(); i++) {
      for (int k = i + 1; k < rest.size(); k++) {
        Branch a = rest.get(i);
        Branch b = rest.get(k);
        double dot = a.heading().dot(b.heading());
        if (runOn(a, b)
            && Math.abs(a.heading().cross(stem.heading())) > ASIDE
            && dot < straightest) {
          straightest = dot;
          through = a;
          onward = b;
        }
      }
    }
    if (through.equals(stem)) {
      return false;
    }
    double side = through.heading().cross(stem.heading());
    for (Branch b : rest) {
      if (!b.equals(through)
          && !b.equals(onward)
          && through.heading().cross(b.heading()) * side < 0) {
        return false;
      }
    }
    return true;
  }
}
