package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.JointMarks;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Pens;
import org.jointwright.drawing.PlanDrawing;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.joint.FillerWidth;
import org.jointwright.joint.Numbering.Item;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.sheet.block.Block;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.ListBlock;
import org.jointwright.sheet.block.Type;

/** A box-out drawn large, with what a crew needs to form it. */
final class BoxOutBlock implements Block {
  private static final double PICTURE = 31;

  /** Between the picture and its figures, millimetres; the picture has as much air of its own. */
  private static final double BESIDE = 1;

  /** Where the second column starts, millimetres. */
  private static final double SECOND = 33;

  private final Facts facts;
  private final Item item;
  private final double turn;
  private final Ring ring;
  private final BoxOutShape shape;

  BoxOutBlock(Facts facts, Item item, double turn) {
    this.facts = facts;
    this.item = item;
    this.turn = turn;
    this.ring = item.boxOut().orElseThrow().outline().ring();
    this.shape = BoxOutShape.of(ring, new Sides(facts.lettering()), item.slab());
  }

  @Override
  public String name() {
    return "box-out-" + item.number();
  }

  private record Figure(String figure, String what) {
    double width() {
      return Math.max(Type.MARK.width(figure), Type.NOTE.width(what));
    }
  }

  private List<Figure> figures() {
    return switch (shape) {
      case BoxOutShape.Round r ->
          List.of(new Figure(facts.print(r.radius()), facts.say("boxOut.radius")));
      case BoxOutShape.Square s -> square(s);
      case BoxOutShape.Turned t ->
          List.of(
              new Figure(facts.print(t.reach()), facts.say("boxOut.tip")),
              new Figure(facts.print(t.reach() * Math.sqrt(2)), facts.say("boxOut.side")));
      case BoxOutShape.Cornered c ->
          c.radius().stream()
              .mapToObj(r -> new Figure(facts.print(r), facts.say("boxOut.endRadius")))
              .toList();
    };
  }

  private List<Figure> square(BoxOutShape.Square s) {
    String length = facts.print(s.length());
    if (length.equals(facts.print(s.depth()))) {
      return List.of(new Figure(length, facts.say("boxOut.side")));
    }
    return List.of(
        new Figure(length, facts.say("boxOut.along", s.along().name())),
        new Figure(facts.print(s.depth()), facts.say("boxOut.across")));
  }

  /** A line of writing in up to two columns. */
  private record Written(Type type, String first, String second) {}

  /** What stands in it, then where it stands itself: its middle, or its corners one by one. */
  private List<Written> written() {
    Sides sides = new Sides(facts.lettering());
    List<Written> lines = new ArrayList<>();
    new FixedPlaces(facts, item).all(middle()).forEach(f -> lines.addAll(fixture(f)));
    middle().ifPresent(p -> lines.addAll(wrapped(centre(p, sides))));
    if (shape instanceof BoxOutShape.Cornered c) {
      CornerList.of(sides, item.slab(), c.corners())
          .ifPresentOrElse(
              l -> lines.addAll(columns(l)),
              () ->
                  c.corners().stream()
                      .map(p -> sides.onSide(item.slab(), p).orElse(sides.off(item.slab(), p)))
                      .forEach(w -> lines.addAll(wrapped(facts.say(w)))));
    }
    return lines;
  }

  private Optional<Point> middle() {
    return switch (shape) {
      case BoxOutShape.Round r -> Optional.of(r.centre());
      case BoxOutShape.Square s -> Optional.of(s.centre());
      case BoxOutShape.Turned t -> Optional.of(t.centre());
      case BoxOutShape.Cornered c -> Optional.empty();
    };
  }

  private List<Written> fixture(FixedPlaces.Fixture fixture) {
    List<Written> lines = new ArrayList<>(wrapped(fixture.size()));
    if (!fixture.middle().isEmpty()) {
      lines.add(new Written(Type.NOTE, facts.say("boxOut.middle"), ""));
    }
    for (FixedPlaces.From f : fixture.middle()) {
      lines.add(new Written(Type.TABLE, f.side().name(), facts.print(f.off())));
    }
    return lines;
  }

  private List<Written> columns(CornerList list) {
    List<Written> lines = new ArrayList<>();
    lines.add(
        new Written(
            Type.NOTE,
            facts.say("boxOut.corners", list.tape().from().letter(), list.tape().to().letter()),
            facts.say(list.isLeft() ? "boxOut.corners.left" : "boxOut.corners.right")));
    for (CornerList.Corner c : list.corners()) {
      lines.add(new Written(Type.TABLE, facts.print(c.along()), facts.print(c.off())));
    }
    return lines;
  }

  private String centre(Point p, Sides sides) {
    return facts.say("boxOut.centre", facts.off(sides.off(item.slab(), p)));
  }

  private static List<Written> wrapped(String text) {
    return Lines.wrap(text, Type.TABLE, ListBlock.WIDTH).stream()
        .map(l -> new Written(Type.TABLE, l, ""))
        .toList();
  }

  @Override
  public double height() {
    return 7 + PICTURE * pictureShare() + 2 + written().size() * 5.7 + 1;
  }

  private double pictureShare() {
    Box box = ring.box();
    return Math.clamp(height(box) / width(box), 0.45, 1);
  }

  private double width(Box b) {
    return turn == 0 ? b.width() : b.height();
  }

  private double height(Box b) {
    return turn == 0 ? b.height() : b.width();
  }

  @Override
  public List<Mark> at(double x, double y, double width) {
    List<Mark> marks = new ArrayList<>();
    double right = x + ListBlock.WIDTH;
    String number = String.valueOf(item.number());
    marks.add(Type.HEAD.at(x, y + 3.6, facts.say("boxOut.title", number), Anchor.START));
    marks.add(Type.NOTE.at(right, y + 3.6, facts.boxedOut(item), Anchor.END));
    marks.add(Mark.Line.of(new Point(x, y + 5.5), new Point(right, y + 5.5), 0.5, Role.RULE));
    double high = PICTURE * pictureShare();
    double figures = figures().stream().mapToDouble(Figure::width).max().orElse(0);
    double wide = Math.min(PICTURE, ListBlock.WIDTH - figures - BESIDE);
    Box room = new Box(x, y + 7, x + wide, y + 7 + high);
    marks.add(new Mark.Group(name() + "-picture", "", picture(room)));
    double base = y + 7 + high / 2 - (figures().size() - 1) * 7.5 + 0.5;
    for (Figure f : figures()) {
      marks.add(Type.MARK.at(right, base, f.figure(), Anchor.END));
      marks.add(Type.NOTE.at(right, base + 5, f.what(), Anchor.END));
      base += 15;
    }
    double line = y + 7 + high + 2 + 4;
    for (Written w : written()) {
      marks.add(w.type().at(x, line, w.first(), Anchor.START));
      if (!w.second().isEmpty()) {
        marks.add(w.type().at(x + SECOND, line, w.second(), Anchor.START));
      }
      line += 5.7;
    }
    return marks;
  }

  private List<Mark> picture(Box room) {
    double margin = 3;
    Box box = ring.box();
    double scale =
        Math.min(
            (room.width() - 2 * margin) / width(box), (room.height() - 2 * margin) / height(box));
    View flat = new View(new Point(0, 0), scale, turn);
    Point origin = room.centre().minus(flat.on(box.centre()));
    View view = new View(origin, scale, turn);
    List<Mark> marks = new ArrayList<>();
    marks.addAll(around(view));
    marks.add(Mark.Area.of(view.on(ring), Role.PAPER));
    Path rim = view.on(new Path(ring.edges()));
    if (item.joints().isEmpty()) {
      marks.add(Mark.Line.of(rim, Pens.PAPER.outline(), Role.OUTLINE));
    }
    Slab slab = facts.plan().slab(item.slab()).orElseThrow();
    for (Joint j : item.joints()) {
      marks.addAll(
          JointMarks.joint(
              JointKind.ISOLATION, view.on(j.path()), FillerWidth.of(j, slab) * scale, Pens.PAPER));
    }
    for (FixedObject f : facts.plan().boxedOut(item.slab(), item.boxOut().orElseThrow())) {
      marks.addAll(PlanDrawing.fixed(f, view, Pens.PAPER));
    }
    return marks;
  }

  /** The stubs of the joints that run from it, and the slab's edge where it stands on one. */
  private List<Mark> around(View view) {
    List<Mark> marks = new ArrayList<>();
    for (Finder.Run run : facts.runs().values()) {
      if (run.path().edges().size() != 1) {
        continue;
      }
      var e = run.path().edges().getFirst();
      for (double t : new double[] {0, 1}) {
        Point p = e.at(t);
        if (ring.distance(p) <= Sides.ON && run.item().slab().equals(item.slab())) {
          Point at = view.on(p);
          Point away = view.heading(e.direction(t)).times(t == 0 ? 1 : -1);
          marks.add(
              Mark.Line.of(at, at.plus(away.times(3)), Pens.PAPER.contraction(), Role.CONTRACTION));
        }
      }
    }
    return marks;
  }
}
