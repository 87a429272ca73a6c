package org.jointwright.layout.piece;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.plan.JointKind;
import org.jointwright.practice.Angles;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jspecify.annotations.Nullable;

/**
 * Where contraction joints end on each other.
 *
 * @param tees the ends on joints that run through, with none going on from the far side
 * @param ys the places where three joints end with none in line with another
 */
record Meets(List<Tally.Tee> tees, int ys) {
  private static final double NEAR = 0.95;
  private static final double THROUGH = -Math.cos(Math.toRadians(Angles.THROUGH.value()));

  /** A stem leaves the through joint by more than this, else it runs along it. */
  private static final double ASIDE = Math.sin(Math.toRadians(10));

  static Meets of(List<Laid> lines) {
    Reading r = new Reading(lines);
    for (int i = 0; i < lines.size(); i++) {
      r.readEnd(i, false);
      r.readEnd(i, true);
    }
    return new Meets(r.tees, r.ys.size());
  }

  /** Reads the ends of a draft's lines. */
  private static final class Reading {
    private final List<Laid> lines;
    private final @Nullable Box[] boxes;
    private final List<Tally.Tee> tees = new ArrayList<>();
    private final List<Point> ys = new ArrayList<>();

    Reading(List<Laid> lines) {
      this.lines = lines;
      this.boxes = new Box[lines.size()];
    }

    void readEnd(int i, boolean last) {
      Laid line = lines.get(i);
      int on = line.tag(last);
      if (on < 0
          || line.kind() != JointKind.CONTRACTION
          || lines.get(on).kind() != JointKind.CONTRACTION) {
        return;
      }
      Point at = line.end(last);
      Point stem = line.onward(last).times(-1);
      List<Point> rest = branches(i, at);
      if (isStem(stem, rest)) {
        tees.add(new Tally.Tee(at, line.onward(last), i));
      } else if (rest.size() == 2
          && ys.stream().noneMatch(y -> y.distance(at) <= NEAR)
          && !runsOn(stem, rest.getFirst())
          && !runsOn(stem, rest.getLast())
          && !runsOn(rest.getFirst(), rest.getLast())) {
        ys.add(at);
      }
    }

    /** The directions in which joints but line {@code i} leave a place. */
    private List<Point> branches(int i, Point at) {
      List<Point> found = new ArrayList<>(4);
      for (int k = 0; k < lines.size(); k++) {
        Laid other = lines.get(k);
        if (k == i || !box(k).holds(at)) {
          continue;
        }
        boolean ends = false;
        for (boolean end : new boolean[] {false, true}) {
          if (other.end(end).distance(at) <= NEAR) {
            found.add(other.onward(end).times(-1));
            ends = true;
          }
        }
        if (!ends && other.path().distance(at) < NEAR) {
          Point along = other.path().direction(other.path().nearest(at));
          found.add(along);
          found.add(along.times(-1));
        }
      }
      return found;
    }

    private Box box(int k) {
      Box box = boxes[k];
      if (box == null) {
        box = lines.get(k).path().box().grown(NEAR);
        boxes[k] = box;
      }
      return box;
    }

    private static boolean runsOn(Point a, Point b) {
      return a.dot(b) < THROUGH;
    }

    /** Whether a branch ends on two others that run through, and none goes on beyond them. */
    private static boolean isStem(Point stem, List<Point> rest) {
      double straightest = Double.POSITIVE_INFINITY;
      int one = -1;
      int two = -1;
      for (int i = 0; i < rest.size(); i++) {
        for (int k = i + 1; k < rest.size(); k++) {
          double dot = rest.get(i).dot(rest.get(k));
          if (dot < THROUGH && dot < straightest && Math.abs(rest.get(i).cross(stem)) > ASIDE) {
            straightest = dot;
            one = i;
            two = k;
          }
        }
      }
      if (one < 0) {
        return false;
      }
      double side = rest.get(one).cross(stem);
      for (int i = 0; i < rest.size(); i++) {
        if (i != one && i != two && rest.get(one).cross(rest.get(i)) * side < 0) {
          return false;
        }
      }
      return true;
    }
  }
}
