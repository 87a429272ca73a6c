package org.jointwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.jointwright.joint.Source;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Ground;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Loop;
import org.jointwright.layout.search.Score;
import org.jointwright.layout.search.Sights;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * The parts into which box-outs from edge to edge divide a slab, as a drain right across it does.
 * They are laid one after the other, and what is laid later lines up across the box-out with what
 * lies there.
 *
 * @param grounds the parts, one where nothing divides the slab
 * @param score how drafts of the whole slab are compared
 */
record Parts(List<Ground> grounds, Score score) {
  /** What is this near to an edge is on it, inches. */
  private static final double ON = 0.5;

  /**
   * A draft of each part.
   *
   * @param lay lays a part, its drafts compared by the score
   */
  List<Draft> drafts(BiFunction<Ground, Score, Draft> lay) {
    List<Draft> drafts = new ArrayList<>();
    for (Ground g : grounds) {
      drafts.add(lay.apply(g, score(g, drafts)));
    }
    return drafts;
  }

  /** How good drafts of the parts are together; less is better. */
  double value(List<Draft> drafts) {
    double sum = 0;
    for (int i = 0; i < drafts.size(); i++) {
      sum += score(grounds.get(i), drafts.subList(0, i)).of(drafts.get(i));
    }
    return sum;
  }

  /** What counts for one part: neighbours and sights on its own edges, and the parts before it. */
  private Score score(Ground ground, List<Draft> before) {
    if (grounds.size() == 1) {
      return score;
    }
    List<Score.Meeting> meetings = new ArrayList<>();
    for (Score.Meeting m : score.meetings()) {
      if (m.stretches().stream().anyMatch(s -> isOn(ground, s.at(0.5)))) {
        meetings.add(m);
      }
    }
    for (Draft d : before) {
      meetings.addAll(across(ground, d));
    }
    List<Point> seen = score.sights().places().stream().filter(p -> isOn(ground, p)).toList();
    return new Score(meetings, new Sights(seen), score.taste(), score.goOn());
  }

  private static boolean isOn(Ground ground, Point p) {
    return ground.loops().stream().anyMatch(l -> l.distance(p) < ON);
  }

  /** Where joints that end at a box-out on its far side would go on from it on this side. */
  private static List<Score.Meeting> across(Ground ground, Draft before) {
    List<Score.Meeting> found = new ArrayList<>();
    for (Loop loop : ground.loops()) {
      for (int i = 0; i < loop.size(); i++) {
        if (loop.tag(i) < 0 && ground.source(loop.tag(i)) instanceof Source.OnBoxOut box) {
          List<Point> ends = ends(before, box.fixed(), loop.edge(i));
          if (!ends.isEmpty()) {
            found.add(new Score.Meeting(List.of(loop.edge(i)), ends));
          }
        }
      }
    }
    return found;
  }

  private static List<Point> ends(Draft before, String fixed, Edge side) {
    List<Point> ends = new ArrayList<>();
    for (Laid l : before.lines()) {
      for (boolean last : new boolean[] {false, true}) {
        int tag = l.tag(last);
        boolean there =
            tag < 0
                && before.ground().source(tag) instanceof Source.OnBoxOut box
                && box.fixed().equals(fixed);
        double at = side.nearest(l.end(last));
        if (there && at > 0 && at < 1) {
          ends.add(side.at(at));
        }
      }
    }
    return ends;
  }
}
