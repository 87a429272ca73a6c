package org.jointwright.sheet.owner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Pens;
import org.jointwright.drawing.PlanDrawing;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.joint.Layout;
import org.jointwright.shape.Box;
import org.jointwright.sheet.page.Scale;
import org.jointwright.sheet.place.Field;
import org.jointwright.sheet.place.Furniture;
import org.jointwright.sheet.place.Ground;
import org.jointwright.sheet.place.Quad;
import org.jointwright.sheet.place.Taken;
import org.jointwright.text.Words;

/**
 * The plan as its owner will see it lie in the ground: no numbers, its joints light.
 *
 * @param scale its scale
 * @param marks what is drawn
 */
record Picture(Scale scale, List<Mark> marks) {
  /** Finer than on the crew’s sheets, construction joints without stubs. */
  static final Pens PENS = new Pens(0.5, 0.35, 0.7, 0, 1e9, 0.18, 1.25, 1.4, 0.3, 10);

  /** What is kept for the ground beside the slabs, millimetres. */
  private static final double BESIDE = 10.5;

  /** The largest scale at which scale bar and north mark find room too. */
  static Picture of(Layout layout, Words words, List<Scale> scales, Box room) {
    Box inner = room.grown(-BESIDE + 7);
    List<Field> fields = Field.of(layout, scales, inner);
    for (Field field : fields) {
      Optional<Picture> drawn = drawn(layout, words, room, field);
      if (drawn.isPresent()) {
        return drawn.get();
      }
    }
    return new Picture(
        fields.getLast().scale(), drawing(layout, room, fields.getLast().view(), List.of()));
  }

  private static Optional<Picture> drawn(Layout layout, Words words, Box room, Field field) {
    View view = field.view();
    Ground ground = new Ground(room.grown(-2));
    Taken.lines(layout.plan(), view, PENS, ground);
    Mark.Group plan = PlanDrawing.of(layout, view, PENS);
    List<Mark> told = new ArrayList<>();
    List<Quad> tinted = Taken.tinted(plan);
    Sizes sizes = new Sizes(words, view, ground);
    told.add(sizes.of(layout.plan()));
    told.add(new Names(layout, words, view, ground, tinted).of(sizes));
    return new Furniture(layout.plan(), words, field, tinted)
        .placeBare(ground)
        .map(
            f -> {
              told.addAll(f);
              return new Picture(field.scale(), drawing(layout, room, view, told));
            });
  }

  private static List<Mark> drawing(Layout layout, Box room, View view, List<Mark> told) {
    List<Mark> marks = new ArrayList<>();
    marks.add(
        Mark.Area.of(
            Rings.box(room.minX(), room.minY(), room.width(), room.height()), Role.GROUND));
    Mark.Group plan = PlanDrawing.of(layout, view, PENS);
    for (Mark mark : plan.marks()) {
      marks.add(mark);
      if (mark instanceof Mark.Group g && g.name().equals("panels")) {
        marks.add(Broom.over(layout.plan(), view));
      }
    }
    marks.addAll(told);
    return List.of(new Mark.Group("picture", "", marks));
  }
}
