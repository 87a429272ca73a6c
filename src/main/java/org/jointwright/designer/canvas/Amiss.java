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
import org.jointwright.shape.Ring;
import org.jointwright.text.Words;

/**
 * What is tinted because it is amiss: panels that break a rule that must hold, and where slabs lie
 * over one another, with how far they do while one of them moves.
 */
public final class Amiss {
  /** How strong the tint of a panel is. */
  public static final double PANEL = 0.13;

  /** How strong the tint of what lies in two slabs is. */
  public static final double LAP = 0.28;

  private static final double FIGURE = 15;

  private Amiss() {}

  /** The panels in sight as areas of the colour of what must be mended. */
  public static List<Mark> panels(Known known, Viewport viewport) {
    View view = viewport.view();
    Box seen = viewport.seen();
    List<Mark> marks = new ArrayList<>();
    for (List<Ring> panel : known.broken()) {
      if (panel.getFirst().box().meets(seen)) {
        marks.add(new Mark.Area(panel.stream().map(view::on).toList(), Role.MUST));
      }
    }
    return marks;
  }

  /** What lies in two slabs at once, as areas of that colour. */
  public static List<Mark> laps(Known known, Viewport viewport) {
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

  /** The rims of that, and which slab lies over which and how far it reaches in. */
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
          words.say(
              "window.tape.over", lap.slab(), lap.other(), words.print(Length.inches(lap.deep())));
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
