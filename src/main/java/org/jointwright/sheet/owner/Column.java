package org.jointwright.sheet.owner;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.JointMarks;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.measure.Area;
import org.jointwright.measure.Length;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Slab.Finishing;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.Type;
import org.jointwright.takeoff.Amount;
import org.jointwright.takeoff.Item;
import org.jointwright.takeoff.Takeoff;
import org.jointwright.takeoff.words.FinishWords;
import org.jointwright.takeoff.words.OrderWords;
import org.jointwright.text.Words;

/** The column beside the picture: what is built, its price, the choices, what the lines mean. */
final class Column {
  private static final int MOST_SLABS = 5;
  private static final double ROW = 6.1;
  private static final int CHOICES = 3;
  private static final double BOX = 3.4;
  private static final double SAMPLE = 9;

  private final Layout layout;
  private final Takeoff takeoff;
  private final Words words;
  private final OrderWords said;
  private final double x;
  private final double right;
  private final List<Mark> marks = new ArrayList<>();
  private double y;

  private Column(Layout layout, Takeoff takeoff, Words words, double x, double y, double right) {
    this.layout = layout;
    this.takeoff = takeoff;
    this.words = words;
    this.said = new OrderWords(words);
    this.x = x;
    this.y = y;
    this.right = right;
  }

  /** How much is told of finishes: all, each in one row, or nothing but a line to be filled in. */
  private enum Told {
    WHOLE,
    CUT,
    BLANK
  }

  /** All of it no lower than {@code low}, with fewer choices and words where they find no room. */
  static Mark.Group above(
      double low, Layout layout, Takeoff takeoff, Words words, Point corner, double right) {
    Mark.Group group = new Mark.Group("owner", "", List.of());
    for (Told told : Told.values()) {
      for (int choices = told == Told.WHOLE ? CHOICES : 0; choices >= 0; choices--) {
        Column column = new Column(layout, takeoff, words, corner.x(), corner.y(), right);
        group = column.group(choices, told);
        if (column.y <= low) {
          return group;
        }
      }
    }
    return group;
  }

  private Mark.Group group(int choices, Told told) {
    head("sheet.owner.get", Role.SELECTED);
    surfaces();
    quantities();
    finishes(told);
    price();
    choices(choices);
    lines();
    return new Mark.Group("owner", "", marks);
  }

  private void head(String key, Role rule) {
    marks.add(Type.HEAD.at(x, y + 3.6, words.say(key), Anchor.START));
    marks.add(Mark.Line.of(new Point(x, y + 5.5), new Point(right, y + 5.5), 0.5, rule));
    y += 7;
  }

  private void row(String label, String figure) {
    double room = right - x - Type.NAME.width(figure) - 2;
    marks.add(Type.TABLE.at(x, y + 4.4, Lines.fitting(label, Type.TABLE, room), Anchor.START));
    marks.add(Type.NAME.at(right, y + 4.4, figure, Anchor.END));
    y += ROW;
  }

  private void surfaces() {
    List<SlabLayout> slabs = layout.slabs();
    if (slabs.size() <= MOST_SLABS) {
      slabs.forEach(s -> row(s.slab().id(), words.say("sheet.owner.area", s.concrete())));
    } else {
      double all = slabs.stream().mapToDouble(s -> s.concrete().squareInches()).sum();
      row(
          words.say("sheet.owner.slabs", slabs.size()),
          words.say("sheet.owner.area", new Area(all)));
    }
  }

  private void quantities() {
    takeoff.of(Item.CONCRETE).stream()
        .findFirst()
        .ifPresent(l -> row(words.say("sheet.owner.concrete"), said.amount(l)));
    double inches =
        Stream.of(Item.TOOLED, Item.SAWN, Item.EARLY)
            .flatMap(i -> takeoff.of(i).stream())
            .mapToDouble(l -> l.amount() instanceof Amount.OfLength(Length a) ? a.inches() : 0)
            .sum();
    if (inches > 0) {
      row(words.say("sheet.owner.joints"), said.run(Length.inches(inches)));
    }
  }

  /** How each slab is finished; a line to be filled in where nobody has said. */
  private void finishes(Told told) {
    List<Slab> slabs = layout.plan().slabs();
    FinishWords said = new FinishWords(words);
    told("sheet.owner.finish", f -> said.finished(f.withPattern("")), told);
    if (told == Told.BLANK || slabs.stream().anyMatch(s -> s.finish().isEmpty())) {
      blank("sheet.owner.finish");
    }
    told("sheet.owner.pattern", f -> f.uncolored().pattern(), told);
    told("sheet.owner.color", Finishing::color, told);
    List<Finishing> colored =
        slabs.stream().map(Slab::finishing).filter(Finishing::isColored).toList();
    if (colored.stream().anyMatch(f -> told == Told.BLANK || f.color().isEmpty())) {
      blank("sheet.owner.color");
    }
  }

  /** A row for all slabs of which the same is said, and their names where there are others. */
  private void told(String key, Function<Finishing, String> what, Told told) {
    if (told == Told.BLANK) {
      return;
    }
    List<Slab> slabs = layout.plan().slabs();
    FinishWords.bySaid(slabs, what)
        .forEach(
            (text, names) -> {
              String label =
                  names.size() == slabs.size()
                      ? words.say(key)
                      : words.say(key + ".of", String.join(", ", names));
              told(label, Lines.known(text), told);
            });
  }

  private void told(String label, String figure, Told told) {
    double room = right - x - 2;
    if (Type.TABLE.width(label) + Type.NAME.width(figure) < room) {
      row(label, figure);
    } else if (told == Told.CUT) {
      double half = Math.max(room / 2, room - Type.TABLE.width(label));
      row(label, Lines.fitting(figure, Type.NAME, half));
    } else {
      row(label, "");
      Lines.wrap(figure, Type.NAME, room).forEach(l -> row("", Lines.fitting(l, Type.NAME, room)));
    }
  }

  /** A line to be filled in by hand. */
  private void blank(String key) {
    String label = words.say(key);
    marks.add(Type.TABLE.at(x, y + 4.4, label, Anchor.START));
    rule(x + Type.TABLE.width(label) + 3, right, y + 5);
    y += ROW;
  }

  private void rule(double from, double to, double at) {
    marks.add(Mark.Line.of(new Point(from, at), new Point(to, at), 0.25, Role.TEXT));
  }

  private void price() {
    y += 4;
    String label = words.say("sheet.owner.price");
    marks.add(Type.MARK.at(x, y + 5.6, label, Anchor.START));
    rule(x + Type.MARK.width(label) + 3, right, y + 6.4);
    y += 12;
  }

  private void choices(int count) {
    if (count == 0) {
      return;
    }
    head("sheet.owner.choices", Role.RULE);
    for (int i = 0; i < count; i++) {
      y += 2;
      Path box = new Path(Rings.box(x, y + 1.6, BOX, BOX).edges());
      marks.add(Mark.Line.of(box, 0.35, Role.TEXT));
      rule(x + BOX + 3, right - 22, y + 5);
      rule(right - 18, right, y + 5);
      y += ROW;
    }
    y += 4;
  }

  private void lines() {
    head("sheet.owner.lines", Role.RULE);
    for (JointKind kind : JointKind.values()) {
      boolean there =
          layout.plan().slabs().stream()
              .anyMatch(s -> s.joints().stream().anyMatch(j -> j.kind() == kind));
      if (there) {
        Path sample = Path.straight(new Point(x, y + 2.9), new Point(x + SAMPLE, y + 2.9));
        marks.addAll(JointMarks.joint(kind, sample, 0, Picture.PENS));
        String said = words.say("sheet.owner.line." + kind.name());
        List<String> all = Lines.wrap(said, Type.NOTE, right - x - SAMPLE - 3);
        for (String line : all) {
          marks.add(Type.NOTE.at(x + SAMPLE + 3, y + 4.4, line, Anchor.START));
          y += all.size() > 1 ? 4.6 : ROW;
        }
        y += all.size() > 1 ? 1.5 : 0;
      }
    }
  }
}
