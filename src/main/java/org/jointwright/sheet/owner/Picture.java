package org.jointwright.sheet.owner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Pens;
import org.jointwright.drawing.PlanDrawing;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.measure.Length;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.Type;
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
    told.add(names(layout, words, view, ground));
    told.add(new Sizes(words, view, ground).of(layout.plan()));
    return new Furniture(layout.plan(), words, field, Taken.tinted(plan))
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

  /** Each slab's name and thickness, amid a panel that has room for it, or beside with a leader. */
  private static Mark.Group names(Layout layout, Words words, View view, Ground ground) {
    List<Mark> marks = new ArrayList<>();
    for (SlabLayout slab : layout.slabs()) {
      Point middle = view.boxOf(slab.slab().outline().ring()).centre();
      String name = Lines.fitting(slab.slab().id(), Type.NAME, 40);
      String thick = words.print(Length.inches(slab.slab().thickness().inches()));
      String said = words.say("sheet.owner.thick", thick);
      List<Point> spots =
          slab.panels().stream()
              .map(p -> view.boxOf(p.ring()).centre())
              .filter(p -> slab.slab().region().contains(view.back(p)))
              .sorted(Comparator.comparingDouble(p -> p.distance(middle)))
              .toList();
      amid(spots, name, said, ground)
          .or(() -> beside(spots, name, ground))
          .ifPresent(marks::addAll);
    }
    return new Mark.Group("slabs", "", marks);
  }

  private static Optional<List<Mark>> amid(
      List<Point> spots, String name, String said, Ground ground) {
    for (boolean whole : new boolean[] {true, false}) {
      for (Point at : spots) {
        Mark.Words first = Type.NAME.at(at.x(), at.y() + (whole ? 0 : 1.7), name, Anchor.MIDDLE);
        Mark.Words second = Type.NOTE.at(at.x(), at.y() + 4.8, said, Anchor.MIDDLE);
        List<Mark.Words> lines = whole ? List.of(first, second) : List.of(first);
        if (lines.stream().allMatch(ground::isFree)) {
          lines.forEach(ground::add);
          return Optional.of(List.copyOf(lines));
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<List<Mark>> beside(List<Point> spots, String name, Ground ground) {
    for (double reach = 8; reach < 60; reach += 2) {
      for (Point from : spots) {
        for (int i = 0; i < 24; i++) {
          Point way = new Point(1, 0).turned(Math.PI / 12 * i + 0.2);
          Point end = from.plus(way.times(reach));
          Anchor anchor = way.x() >= 0 ? Anchor.START : Anchor.END;
          double gap = way.x() >= 0 ? 1 : -1;
          Mark.Words words = Type.NAME.at(end.x() + gap, end.y() + 1.7, name, anchor);
          if (ground.isFree(Quad.of(words, 1)) && ground.isFreeOfTexts(Quad.line(from, end, 0.3))) {
            ground.add(words);
            ground.add(Quad.line(from, end, 0.3));
            return Optional.of(
                List.of(
                    Mark.Line.of(from, end, PENS.thin(), Role.DIMENSION),
                    Mark.Area.of(Rings.circle(from, 0.6), Role.DIMENSION),
                    words));
          }
        }
      }
    }
    return Optional.empty();
  }
}
