package org.jointwright.designer.state;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.designer.sketch.Guide;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Tape;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Places that divide a straight side evenly between the joints that end on it: halves, thirds. */
final class EvenMarks {
  /** An end this near to a side stands on it; inches. */
  private static final double ON = 0.5;

  /** Stretches shorter than this are not divided, inches. */
  private static final double SHORTEST = 24;

  private EvenMarks() {}

  /** A guide to each, from the joint or corner before it. */
  static List<Guide> of(Plan plan) {
    List<Guide> guides = new ArrayList<>();
    for (Tape tape : Lettering.of(plan).tapes()) {
      if (tape.isStraight()) {
        on(plan, tape, guides);
      }
    }
    return guides;
  }

  private static void on(Plan plan, Tape tape, List<Guide> guides) {
    Edge side = new Segment(tape.from().at(), tape.to().at());
    List<Double> marks = new ArrayList<>(List.of(0.0, side.length()));
    for (Slab s : plan.slabs()) {
      for (Joint j : s.joints()) {
        if (j.kind() != JointKind.ISOLATION) {
          for (Point p : List.of(j.path().start(), j.path().end())) {
            if (side.distance(p) <= ON) {
              marks.add(side.nearest(p) * side.length());
            }
          }
        }
      }
    }
    marks.sort(null);
    for (int i = 1; i < marks.size(); i++) {
      double before = marks.get(i - 1);
      double stretch = marks.get(i) - before;
      if (stretch >= SHORTEST) {
        for (double share : new double[] {1 / 2.0, 1 / 3.0, 2 / 3.0}) {
          Point at = side.at((before + share * stretch) / side.length());
          Point from = side.at(before / side.length());
          Point to = side.at((before + stretch) / side.length());
          guides.add(Guide.within(Guide.Kind.EVEN, from, at, to));
        }
      }
    }
  }
}
