package org.jointwright.check.face;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.jointwright.practice.Angles;
import org.jointwright.practice.Corners;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Point;

/**
 * The edges of the concrete, joints left aside: outline, openings and box-outs as closed rounds,
 * and the places on them where joints end.
 */
public final class Rim {
  private static final double TOGETHER =
      Corners.TOGETHER.value().inches() + Tolerance.LENGTH_INCHES;
  private static final double INSIDE = Angles.INSIDE.value() + Tolerance.ANGLE.value();

  /** Inside corners farther apart along the edge than this are no neighbours, inches. */
  private static final double FARTHEST = 3 * TOGETHER;

  private final List<List<Step>> rounds = new ArrayList<>();
  private final Set<Point> jointEnds = new HashSet<>();

  /** The rim of a slab with these panels. */
  public static Rim of(List<Face> faces) {
    return new Rim(faces);
  }

  private Rim(List<Face> faces) {
    Map<Point, List<Step>> leaving = new HashMap<>();
    List<Step> hard = new ArrayList<>();
    for (Face face : faces) {
      face.steps()
          .forEach(
              s -> {
                if (s.hard()) {
                  hard.add(s);
                  leaving.computeIfAbsent(s.edge().start(), k -> new ArrayList<>()).add(s);
                } else {
                  jointEnds.add(s.edge().start());
                  jointEnds.add(s.edge().end());
                }
              });
    }
    Set<Step> done = new HashSet<>();
    for (Step first : hard) {
      List<Step> round = new ArrayList<>();
      Step s = first;
      while (done.add(s)) {
        round.add(s);
        s = next(s, leaving.getOrDefault(s.edge().end(), List.of()));
      }
      if (round.size() > 1 && s.equals(first)) {
        rounds.add(round);
      }
    }
  }

  /** The next side along the concrete's edge: the one that turns most to the left. */
  private static Step next(Step arriving, List<Step> leaving) {
    Step best = arriving;
    double most = Double.NEGATIVE_INFINITY;
    for (Step s : leaving) {
      double turn = Turn.degrees(arriving.edge(), s.edge());
      if (turn > most) {
        most = turn;
        best = s;
      }
    }
    return best;
  }

  /** Whether a joint of the layout ends at a place of the rim. */
  public boolean isJointEnd(Point p) {
    return jointEnds.contains(p);
  }

  /**
   * The inside corners that are served by a joint which ends between them and another inside corner
   * within 6 in, or at that other one.
   */
  public Set<Point> servedTogether() {
    Set<Point> served = new LinkedHashSet<>();
    rounds.forEach(round -> addServed(round, served::add));
    return served;
  }

  private void addServed(List<Step> round, Consumer<Point> served) {
    List<Place> places = places(round);
    double total = round.stream().mapToDouble(Step::length).sum();
    List<Place> inside = places.stream().filter(p -> p.interior() > INSIDE).toList();
    List<Place> ends = places.stream().filter(p -> isJointEnd(p.at())).toList();
    for (Place a : inside) {
      for (Place b : inside) {
        double on =
            Math.floorMod(Math.round((b.along() - a.along()) * 1e6), Math.round(total * 1e6)) / 1e6;
        if (!a.equals(b)
            && a.at().distance(b.at()) <= TOGETHER
            && on <= FARTHEST
            && ends.stream().anyMatch(e -> isBetween(e, a, b, on, total))) {
          served.accept(a.at());
          served.accept(b.at());
        }
      }
    }
  }

  private static boolean isBetween(Place end, Place a, Place b, double on, double total) {
    double slack = Tolerance.LENGTH_INCHES;
    double from = (end.along() - a.along() + slack) % total;
    if (from < 0) {
      from += total;
    }
    return from <= on + 2 * slack
        && end.at().distance(a.at()) <= TOGETHER
        && end.at().distance(b.at()) <= TOGETHER;
  }

  /** A place where two sides of a round meet. */
  private record Place(Point at, double interior, double along) {}

  private static List<Place> places(List<Step> round) {
    List<Place> places = new ArrayList<>();
    double along = 0;
    for (int i = 0; i < round.size(); i++) {
      Step in = round.get(i);
      Step out = round.get((i + 1) % round.size());
      along += in.length();
      places.add(new Place(out.edge().start(), 180 - Turn.degrees(in.edge(), out.edge()), along));
    }
    return places;
  }
}
