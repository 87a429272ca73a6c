package org.jointwright.joint;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;

/** Lines that joint ends may be meant to reach, each with the box in which ends are near it. */
final class Targets {
  /** An end this near a corner is meant to be on it, inches. */
  private static final double HARD_BY = 1.0 / 16;

  private final List<Line> lines;
  private final List<Box> boxes = new ArrayList<>();

  Targets(List<Line> lines) {
    this.lines = new ArrayList<>(lines);
    lines.forEach(l -> boxes.add(box(l)));
  }

  private static Box box(Line line) {
    return line.edge().box().grown(Lines.REACH);
  }

  int size() {
    return lines.size();
  }

  Line get(int i) {
    return lines.get(i);
  }

  void set(int i, Line line) {
    if (!line.edge().equals(lines.get(i).edge())) {
      boxes.set(i, box(line));
    }
    lines.set(i, line);
  }

  List<Line> lines() {
    return lines;
  }

  /** Whether a point lies on one of them. */
  boolean hold(Point p) {
    for (int i = 0; i < lines.size(); i++) {
      if (boxes.get(i).holds(p) && lines.get(i).edge().distance(p) <= Noding.SAME) {
        return true;
      }
    }
    return false;
  }

  /** The nearest corner of the lines hard by, else their nearest point in reach, else the end. */
  Point nearest(Line own, Point end) {
    Point corner = end;
    double cornerAt = HARD_BY;
    Point foot = end;
    double footAt = Lines.REACH;
    for (int i = 0; i < lines.size(); i++) {
      Line other = lines.get(i);
      if (!boxes.get(i).holds(end) || other.rank() == own.rank()) {
        continue;
      }
      for (Point p : List.of(other.edge().start(), other.edge().end())) {
        // Two joints' ends are drawn together on the one that was given first.
        if (p.distance(end) < cornerAt && other.rank() < own.rank()) {
          corner = p;
          cornerAt = p.distance(end);
        }
      }
      Point near = other.edge().at(other.edge().nearest(end));
      if (near.distance(end) < footAt) {
        foot = near;
        footAt = near.distance(end);
      }
    }
    // A corner a hair off along the edge is the corner; farther off the end is a mark of its own.
    return cornerAt < HARD_BY ? corner : foot;
  }
}
