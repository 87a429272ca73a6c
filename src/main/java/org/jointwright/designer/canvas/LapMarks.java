package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jointwright.designer.state.Viewport;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.drawing.Weight;
import org.jointwright.joint.Lap;
import org.jointwright.measure.Length;
import org.jointwright.shape.Box;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.text.Words;

/** Where slabs lie over one another, to be tinted, and how far while one of them moves. */
public final class LapMarks {
  /** How strong the tint is. */
  public static final double STRENGTH = 0.28;

  private static final double FIGURE = 15;

  private LapMarks() {}

  /** What lies in two slabs at once, as areas of the colour of what must be mended. */
  public static List<Mark> of(Known known, Viewport viewport) {
    return known.laps().stream()
        .flatMap(l -> l.overlap().parts().stream())
        .map(r -> area(r, viewport.view()))
        .toList();
  }

  private static Mark area(Region region, View view) {
    return new Mark.Area(
        Stream.concat(Stream.of(region.outer()), region.holes().stream()).map(view::on).toList(),
        Role.MUST);
  }

  /** The rims of that, and which slab it is and how far it reaches in. */
  static List<Mark> said(Known known, Viewport viewport, Words words) {
    View view = viewport.view();
    List<Mark> marks = new ArrayList<>();
    for (Lap lap : known.laps()) {
      lap.overlap().parts().stream()
          .map(r -> view.on(new Path(r.outer().edges())))
          .forEach(p -> marks.add(Mark.Line.of(p, 1.6, Role.MUST)));
    }
    for (Lap lap : known.laps()) {
      String text =
          words.say("window.tape.over", words.print(Length.inches(lap.deep())), lap.other());
      Box box =
          lap.overlap().parts().stream()
              .map(r -> view.boxOf(r.outer()))
              .reduce(Box::with)
              .orElseThrow();
      marks.addAll(
          SideTape.figure(
              new Point(box.centre().x(), box.maxY()),
              new Point(0, 1),
              text,
              FIGURE,
              Weight.BOLD,
              Role.MUST,
              viewport.written()));
    }
    return marks;
  }
}
