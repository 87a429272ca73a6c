package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.JointMark;
import org.jointwright.designer.state.JointSlide;
import org.jointwright.designer.state.Laid;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.TapeMarks;
import org.jointwright.drawing.Typeface;
import org.jointwright.drawing.View;
import org.jointwright.drawing.Weight;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Box;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/** The tape along the side on which a joint stands: its mark, and the way on to the next. */
final class JointTape {
  /** How far off its side the tape may run, the first that is free of flags; pixels. */
  private static final double[] OFF = {46, 62, 78, 94, 110};

  /** What the tape takes to either side of its line; pixels. */
  private static final double WIDE = 8;

  private static final double ARROW = 13;
  private static final double TAPE = 22;
  private static final double ONWARD = 15;
  private static final double HELD = 38;
  private static final double WAS = 15;

  /** How far a figure is moved on at a time, pixels, and how often. */
  private static final double STEP = 6;

  private static final int MOST_STEPS = 40;
  private static final double HELD_ONWARD = 28;

  private final Desk desk;
  private final View view;
  private final Words words;
  private final Plan plan;
  private final Known known;
  private final List<Box> flags;
  private final Box paper;
  private final Box room;
  private final List<Mark> marks = new ArrayList<>();

  /** The way that the tape runs. */
  private Point way = new Point(1, 0);

  /** Where figures stand. */
  private final List<Box> figured = new ArrayList<>();

  /** For a desk, what is known of its plan and the flags on it. */
  JointTape(Desk desk, Known known, FlagMarks flags, Words words) {
    view = desk.viewport().view();
    this.flags = flags.cloths();
    paper = desk.viewport().paper();
    room = desk.viewport().written();
    this.words = words;
    this.desk = desk;
    plan = desk.plan();
    this.known = known;
  }

  /** The tape of a joint that is picked, and its number filled with chalk. */
  List<Mark> picked(String slab, Joint joint) {
    known.number(plan, slab, joint).ifPresent(i -> number(Integer.toString(i.number()), joint));
    tape(joint, TAPE, ONWARD, Role.QUIET_TEXT);
    return marks;
  }

  /** Where the figures of the tape stand, and the number. */
  List<Box> figures() {
    return figured;
  }

  /** The tape of a joint under the hand; the way on is red when the panel there is too long. */
  List<Mark> held(Hold.HeldJoint held) {
    boolean isBroken = isBroken(held.slab());
    number(held.number(), held.now());
    tape(held.now(), HELD, HELD_ONWARD, isBroken ? Role.MUST : Role.TEXT);
    was(held);
    return marks;
  }

  private void number(String number, Joint joint) {
    Point at = view.on(joint.path().edges().getFirst().at(0.42));
    double half = Math.max(9.5, Typeface.of(Weight.BOLD).width(number, 12) / 2 + 5);
    figured.add(around(at, half, 9.5));
    marks.add(
        Mark.Area.of(Rings.rounded(at.x() - half, at.y() - 9.5, 2 * half, 19, 4), Role.SELECTED));
    Point base = at.plus(new Point(0, 4.3));
    marks.add(Mark.Words.level(base, number, 12, Weight.BOLD, Anchor.MIDDLE, Role.ON_MUST));
  }

  private boolean isBroken(String slab) {
    List<Finding> findings = desk.laying().laid().map(Laid::findings).orElse(List.of());
    return findings.stream().anyMatch(f -> f.severity() == Severity.MUST && f.slab().equals(slab));
  }

  private void was(Hold.HeldJoint held) {
    Joint old = held.now().withPath(held.was());
    JointMark.either(plan, known.lettering(plan), old)
        .ifPresent(
            m -> {
              String text = words.say("window.tape.was", Length.inches(m.at()));
              Point a = view.on(held.was().start());
              Point b = view.on(held.was().end());
              boolean isLevel = Math.abs(b.x() - a.x()) > Math.abs(b.y() - a.y());
              double half = Typeface.of(Weight.REGULAR).width(text, WAS) / 2;
              Point by = isLevel ? new Point(0, -WAS) : new Point(half + 10, 0);
              Point at = InSight.pushed(a.towards(b, 0.78).plus(by), half + 4, WAS / 2, room);
              marks.addAll(SideTape.strip(at, text, WAS, Weight.REGULAR, Role.QUIET_TEXT));
            });
  }

  private void tape(Joint joint, double size, double onward, Role onwardRole) {
    Optional<JointMark> found = JointMark.either(plan, known.lettering(plan), joint);
    if (found.isEmpty() || !found.get().tape().isStraight()) {
      return;
    }
    JointMark mark = found.get();
    JointMark.Onward on = mark.onward(plan, joint);
    Point out = view.heading(outwards(mark));
    Point from = view.on(mark.tape().from().at());
    Point to = view.on(JointSlide.onTape(mark, mark.at() + on.length()));
    double off = off(from, to, out);
    Point by = out.times(off);
    Point hook = from.plus(by);
    Point at = view.on(mark.place()).plus(by);
    Point next = to.plus(by);
    way = next.equals(hook) ? out.left() : next.minus(hook).unit();
    stretch(hook, at, true);
    stretch(at, next, false);
    for (Point p : List.of(hook, at, next)) {
      marks.add(Mark.Line.of(p.minus(out.times(off - 6)), p.plus(out.times(7)), 1.2, Role.STRING));
    }
    figure(
        hook.towards(at, 0.5),
        out,
        words.print(Length.inches(mark.at())),
        size,
        Role.SELECTED,
        words.say("window.tape.from", mark.tape().from().letter()));
    figure(
        at.towards(next, 0.5),
        out,
        words.print(Length.inches(on.length())),
        onward,
        onwardRole,
        onwardTo(mark, on));
  }

  /** The distance at which the tape runs through the fewest flags, the nearest of them. */
  private double off(Point from, Point to, Point out) {
    double best = OFF[0];
    long fewest = Long.MAX_VALUE;
    for (double off : OFF) {
      Path line = Path.straight(from.plus(out.times(off)), to.plus(out.times(off)));
      Box about = line.edges().getFirst().box().grown(WIDE);
      long struck = flags.stream().filter(about::meets).filter(b -> isStruck(b, line)).count();
      boolean isOnPaper = paper.holds(line.start()) && paper.holds(line.end());
      if (struck < fewest && (isOnPaper || off == OFF[0])) {
        fewest = struck;
        best = off;
      }
    }
    return best;
  }

  private static boolean isStruck(Box flag, Path line) {
    double length = line.length();
    for (double s = 0; s <= length; s += WIDE / 2) {
      Point p = line.edges().getFirst().at(s / length);
      if (flag.meets(new Box(p.x() - WIDE, p.y() - WIDE, p.x() + WIDE, p.y() + WIDE))) {
        return true;
      }
    }
    return false;
  }

  private String onwardTo(JointMark mark, JointMark.Onward on) {
    return on.to()
        .flatMap(j -> known.numbering(plan).of(on.slab(), j))
        .map(i -> words.say("window.tape.toJoint", Integer.toString(i.number())))
        .orElseGet(() -> words.say("window.tape.toCorner", mark.tape().to().letter()));
  }

  private Point outwards(JointMark mark) {
    Point left = mark.tape().path().edges().getFirst().direction(0.5).left();
    return mark.tape().along() ? left.times(-1) : left;
  }

  private void stretch(Point from, Point to, boolean first) {
    if (from.distance(to) < 2) {
      return;
    }
    Point heading = to.minus(from).unit();
    marks.add(Mark.Line.of(from, to, 2, Role.STRING));
    if (first) {
      marks.add(TapeMarks.hook(from, heading, 16, 4, Role.STRING));
    }
    if (from.distance(to) > 2 * ARROW) {
      marks.add(TapeMarks.arrow(to, heading, ARROW, Role.STRING));
    }
  }

  /**
   * The middle of a figure: on the paper, and moved on along the tape where it would stand on the
   * figure before it.
   *
   * @param wide half its width
   * @param high half its height
   */
  private Point placed(Point wanted, double wide, double high) {
    Point at = InSight.pushed(wanted, wide, high, room);
    for (int i = 1; i <= MOST_STEPS && isOnFigure(at, wide, high); i++) {
      at = InSight.pushed(wanted.plus(way.times(i * STEP)), wide, high, room);
    }
    figured.add(around(at, wide, high));
    return at;
  }

  private boolean isOnFigure(Point at, double wide, double high) {
    return figured.stream().anyMatch(b -> b.meets(around(at, wide, high)));
  }

  private static Box around(Point at, double wide, double high) {
    return new Box(at.x() - wide, at.y() - high, at.x() + wide, at.y() + high);
  }

  private void figure(Point by, Point out, String text, double size, Role role, String below) {
    Weight weight = size >= TAPE ? Weight.BOLD : Weight.REGULAR;
    if (size <= TAPE) {
      double half = Typeface.of(weight).width(text, size) / 2;
      Point at = placed(SideTape.clear(by, out, half, size), half + 4, size * 0.55);
      marks.addAll(SideTape.strip(at, text, size, weight, role));
      return;
    }
    // Figure and caption stand as one block clear of the tape.
    double caption = 16;
    double half =
        Math.max(
                Typeface.of(weight).width(text, size), Typeface.of(Weight.REGULAR).width(below, 14))
            / 2;
    double high = (size + caption) / 2;
    Point clear = by.plus(out.times(10 + Math.abs(out.x()) * half + Math.abs(out.y()) * high));
    Point c = placed(clear, half + 8, high + 4);
    marks.add(
        Mark.Area.of(
            Rings.rounded(c.x() - half - 6, c.y() - high - 2, 2 * half + 12, 2 * high + 6, 4),
            Role.PAPER));
    Point base = new Point(c.x(), c.y() - high + size * 0.86);
    marks.add(Mark.Words.level(base, text, size, weight, Anchor.MIDDLE, role));
    marks.add(
        Mark.Words.level(
            base.plus(new Point(0, caption + 4)),
            below,
            14,
            Weight.REGULAR,
            Anchor.MIDDLE,
            Role.QUIET_TEXT));
  }
}
