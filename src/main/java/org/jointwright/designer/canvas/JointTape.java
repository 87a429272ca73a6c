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
import org.jointwright.drawing.Numbering;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.TapeMarks;
import org.jointwright.drawing.View;
import org.jointwright.drawing.Weight;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/** The tape along the side on which a joint stands: its mark, and the way on to the next. */
final class JointTape {
  private static final double OFF = 46;
  private static final double ARROW = 13;
  private static final double TAPE = 22;
  private static final double ONWARD = 15;
  private static final double HELD = 38;
  private static final double HELD_ONWARD = 28;

  private final View view;
  private final Words words;
  private final Plan plan;
  private final List<Mark> marks = new ArrayList<>();

  private JointTape(Desk desk, Words words) {
    view = desk.viewport().view();
    this.words = words;
    plan = desk.plan();
  }

  /** The tape of a joint that is picked. */
  static List<Mark> picked(Desk desk, String slab, Joint joint, Words words) {
    JointTape t = new JointTape(desk, words);
    t.tape(joint, TAPE, ONWARD, Role.QUIET_TEXT);
    return t.marks;
  }

  /** The tape of a joint under the hand; the way on is red when the panel there is too long. */
  static List<Mark> held(Desk desk, Hold.HeldJoint held, Words words) {
    JointTape t = new JointTape(desk, words);
    boolean isBroken = isBroken(desk, held.slab());
    t.tape(held.now(), HELD, HELD_ONWARD, isBroken ? Role.MUST : Role.TEXT);
    t.was(held);
    return t.marks;
  }

  private static boolean isBroken(Desk desk, String slab) {
    List<Finding> findings = desk.laying().laid().map(Laid::findings).orElse(List.of());
    return findings.stream().anyMatch(f -> f.severity() == Severity.MUST && f.slab().equals(slab));
  }

  private void was(Hold.HeldJoint held) {
    Joint old = held.now().withPath(held.was());
    JointMark.either(plan, Lettering.of(plan), old)
        .ifPresent(
            m -> {
              String text = words.say("window.tape.was", Length.inches(m.at()));
              Point at = view.on(held.was().start()).towards(view.on(held.was().end()), 0.85);
              marks.add(
                  Mark.Words.level(
                      at.plus(new Point(8, 0)),
                      text,
                      15,
                      Weight.REGULAR,
                      Anchor.START,
                      Role.QUIET_TEXT));
            });
  }

  private void tape(Joint joint, double size, double onward, Role onwardRole) {
    Optional<JointMark> found = JointMark.either(plan, Lettering.of(plan), joint);
    if (found.isEmpty() || !found.get().tape().isStraight()) {
      return;
    }
    JointMark mark = found.get();
    JointMark.Onward on = mark.onward(plan, joint);
    Point out = view.heading(outwards(mark));
    Point by = out.times(OFF);
    Point hook = view.on(mark.tape().from().at()).plus(by);
    Point at = view.on(mark.place()).plus(by);
    Point next = view.on(JointSlide.onTape(mark, mark.at() + on.length())).plus(by);
    stretch(hook, at, true);
    stretch(at, next, false);
    for (Point p : List.of(hook, at, next)) {
      marks.add(Mark.Line.of(p.minus(out.times(OFF - 6)), p.plus(out.times(7)), 1.2, Role.STRING));
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

  private String onwardTo(JointMark mark, JointMark.Onward on) {
    return on.to()
        .flatMap(j -> Numbering.of(plan).of(on.slab(), j))
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
    Point way = to.minus(from).unit();
    marks.add(Mark.Line.of(from, to, 2, Role.STRING));
    if (first) {
      marks.add(TapeMarks.hook(from, way, 16, 4, Role.STRING));
    }
    if (from.distance(to) > 2 * ARROW) {
      marks.add(TapeMarks.arrow(to, way, ARROW, Role.STRING));
    }
  }

  private void figure(Point by, Point out, String text, double size, Role role, String below) {
    Weight weight = size >= TAPE ? Weight.BOLD : Weight.REGULAR;
    marks.addAll(SideTape.figure(by, out, text, size, weight, role));
    if (size > TAPE) {
      Point under = by.plus(out.times(size + 8));
      marks.addAll(SideTape.figure(under, out, below, 14, Weight.REGULAR, Role.QUIET_TEXT));
    }
  }
}
