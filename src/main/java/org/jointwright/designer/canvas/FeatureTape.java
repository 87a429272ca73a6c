package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Viewport;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.TapeMarks;
import org.jointwright.drawing.View;
import org.jointwright.drawing.Weight;
import org.jointwright.measure.Length;
import org.jointwright.plan.Feature;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.jointwright.text.Words;

/** The tape along a side to both ends of what is marked on it, from the side's first corner. */
final class FeatureTape {
  private static final double OFF = 30;
  private static final double ARROW = 12;
  private static final double SIZE = 18;

  private FeatureTape() {}

  static List<Mark> of(Plan plan, Pick.AtFeature pick, Viewport viewport, Words words) {
    View view = viewport.view();
    Optional<Edge> edge = Picks.edge(plan, pick.edge());
    Optional<Feature> feature = Picks.feature(plan, pick);
    List<Mark> marks = new ArrayList<>();
    if (edge.isEmpty() || feature.isEmpty()) {
      return marks;
    }
    Edge side = edge.get();
    double[] ends = {feature.get().from(), Math.min(feature.get().to(), side.length())};
    Point hook = beside(side, 0, view);
    if (side instanceof Segment) {
      Point far = beside(side, ends[1], view);
      Point way = far.minus(hook).unit();
      marks.add(Mark.Line.of(hook, far.minus(way.times(ARROW - 2)), 1.6, Role.STRING));
      marks.add(TapeMarks.hook(hook, way, 14, 4, Role.STRING));
    }
    for (double at : ends) {
      Point mark = beside(side, at, view);
      double share = at / side.length();
      if (side instanceof Segment && mark.distance(hook) > 2 * ARROW) {
        marks.add(TapeMarks.arrow(mark, mark.minus(hook).unit(), ARROW, Role.STRING));
      }
      Point out = view.heading(side.direction(share).left()).times(-1);
      String figure = words.print(Length.inches(at));
      marks.addAll(
          SideTape.figure(mark, out, figure, SIZE, Weight.BOLD, Role.STRING, viewport.written()));
    }
    return marks;
  }

  private static Point beside(Edge side, double at, View view) {
    double share = at / side.length();
    Point out = view.heading(side.direction(share).left()).times(-1);
    return view.on(side.at(share)).plus(out.times(OFF));
  }
}
