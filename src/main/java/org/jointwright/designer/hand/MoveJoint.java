package org.jointwright.designer.hand;

import java.util.List;
import java.util.Optional;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.sketch.Guide;
import org.jointwright.designer.state.Attraction;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Hold;
import org.jointwright.designer.state.InHand;
import org.jointwright.designer.state.JointMark;
import org.jointwright.designer.state.JointPull;
import org.jointwright.designer.state.JointRun;
import org.jointwright.designer.state.JointSlide;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Pointer;
import org.jointwright.joint.Numbering;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.plan.edit.History;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/**
 * Drags a joint sideways and locks it where it is let go. Its mark stays at whole inches, or whole
 * centimetres, unless the hand wants no help. The other joints stay; what ends on it goes along.
 *
 * @param pressed the joint under the hand when it pressed
 * @param grip where on the paper the hand pressed
 * @param part what of it the hand holds
 */
record MoveJoint(Pick.AtJoint pressed, Pointer grip, Part part) implements Gesture {
  /** An end of the joint that is picked is taken hold of from this far; pixels. */
  private static final double END = 10;

  /** Corners, joints and even places draw it from this far; pixels. */
  private static final double REACH = 6;

  /** What of it the hand holds. */
  enum Part {
    /** All of it: it is slid sideways. */
    WHOLE,
    /** Where it starts; the other end stays. */
    START,
    /** Where it ends; the other end stays. */
    END
  }

  MoveJoint(Pick.AtJoint pressed, Pointer grip) {
    this(pressed, grip, Part.WHOLE);
  }

  static MoveJoint of(Desk desk, Pick.AtJoint pick, Pointer pointer) {
    Optional<Joint> joint = Picks.joint(desk.plan(), pick).filter(j -> desk.picked().equals(pick));
    boolean isStart = joint.filter(j -> isAt(desk, j.path().start(), pointer)).isPresent();
    boolean isEnd = joint.filter(j -> isAt(desk, j.path().end(), pointer)).isPresent();
    return new MoveJoint(pick, pointer, isStart ? Part.START : isEnd ? Part.END : Part.WHOLE);
  }

  private static boolean isAt(Desk desk, Point end, Pointer pointer) {
    return desk.viewport().toPaper(end).distance(pointer.paper()) <= END;
  }

  /**
   * What is dragged, before the drag.
   *
   * @param before the plan then
   * @param pick the joint by its name in that plan
   */
  private record Grasp(Plan before, Pick.AtJoint pick, Joint joint, String number) {
    private static Optional<Grasp> of(Plan before, Pick.AtJoint pick) {
      return Picks.joint(before, pick)
          .map(
              j -> {
                String number =
                    Numbering.of(before)
                        .of(pick.slab(), j)
                        .map(i -> Integer.toString(i.number()))
                        .orElse("");
                return new Grasp(before, pick, j, number);
              });
    }
  }

  @Override
  public Desk press(Desk desk, Pointer pointer) {
    return desk.picking(pressed);
  }

  @Override
  public Desk drag(Desk desk, Pointer pointer) {
    boolean isMoving = desk.hand().hold().isPresent();
    boolean isClick = pointer.isClickAt(grip);
    if (!isMoving && isClick) {
      return desk;
    }
    Point by = pointer.plan().minus(grip.plan());
    return (isMoving ? held(desk) : taken(desk))
        .filter(g -> JointSlide.canSlide(g.joint()))
        .flatMap(
            g -> {
              if (part != Part.WHOLE) {
                return turned(desk, g, pointer)
                    .map(path -> moved(desk, g, path, Optional.empty(), isMoving));
              }
              Optional<Path> free = JointSlide.by(g.before(), g.pick().slab(), g.joint(), by);
              Optional<JointPull> pull =
                  pointer.isFree() ? Optional.empty() : free.flatMap(p -> pull(desk, g, p));
              Optional<Path> pulled =
                  free.flatMap(p -> pull.flatMap(x -> slid(g, p, x.by())))
                      .flatMap(
                          p ->
                              isEven(pull)
                                  ? atWholeMark(g, p)
                                  : JointRun.within(g.before(), g.pick().slab(), p));
              Optional<Guide> guide = pulled.flatMap(p -> pull).map(JointPull::guide);
              return pulled
                  .or(() -> pointer.isFree() ? free : free.flatMap(p -> atWholeMark(g, p)))
                  .or(() -> free)
                  .map(path -> moved(desk, g, path, guide, isMoving));
            })
        .orElse(desk);
  }

  /**
   * What is picked when the drag begins: an answer that came since the press may have given the
   * joint another name, or none.
   */
  private static Optional<Grasp> taken(Desk desk) {
    return desk.picked() instanceof Pick.AtJoint now
        ? Grasp.of(desk.plan(), now)
        : Optional.empty();
  }

  /** What the drag under way began with; empty where it cannot go on, as once it is saved. */
  private static Optional<Grasp> held(Desk desk) {
    List<History.Step> past = desk.history().past();
    return !past.isEmpty()
            && !desk.history().isSaved()
            && past.getLast().edit() instanceof JointEdit.Move move
        ? Grasp.of(past.getLast().before(), new Pick.AtJoint(move.slab(), move.joint()))
        : Optional.empty();
  }

  /** What draws the joint from where it would run without help. */
  private static Optional<JointPull> pull(Desk desk, Grasp grasp, Path path) {
    Pick.AtJoint pick = grasp.pick();
    Plan without = new JointEdit.Remove(pick.slab(), pick.joint()).applyTo(grasp.before());
    return JointPull.near(without, pick.slab(), path, desk.viewport().inches(REACH));
  }

  private static Optional<Path> slid(Grasp grasp, Path path, Point by) {
    return JointSlide.by(grasp.before(), grasp.pick().slab(), grasp.joint().withPath(path), by);
  }

  /** Even places are taken at the nearest whole inch, as tapes are read. */
  private static boolean isEven(Optional<JointPull> pull) {
    return pull.filter(p -> p.guide().kind() == Guide.Kind.EVEN).isPresent();
  }

  private static Desk moved(
      Desk desk, Grasp grasp, Path path, Optional<Guide> guide, boolean isMoving) {
    Pick.AtJoint pick = grasp.pick();
    JointEdit.Move edit = JointSlide.move(grasp.before(), pick, grasp.joint(), path);
    Desk moved = isMoving ? desk.goingOnOnly(edit) : desk.editedOnly(edit);
    Joint now = grasp.joint().withPath(path).withLocked(true);
    Hold hold = new Hold.HeldJoint(pick.slab(), grasp.number(), grasp.joint().path(), now, guide);
    return moved.picking(pick).withHand(InHand.holding(hold));
  }

  /** One end led to the hand, drawn by corners, joints, even places; the other end stays. */
  private Optional<Path> turned(Desk desk, Grasp grasp, Pointer pointer) {
    Pick.AtJoint pick = grasp.pick();
    Plan without = new JointEdit.Remove(pick.slab(), pick.joint()).applyTo(grasp.before());
    Path was = grasp.joint().path();
    boolean isStart = part == Part.START;
    Point fixed = isStart ? was.end() : was.start();
    Draft line = Draft.begun(Drawn.JOINT).begunAt(fixed);
    Point to =
        pointer.isFree()
            ? pointer.plan()
            : Attraction.joint(without, line, desk.viewport().inches(1)).at(pointer.plan()).at();
    return JointRun.from(without, pick.slab(), fixed, to)
        .map(p -> isStart ? Path.straight(p.end(), p.start()) : p);
  }

  private static Optional<Path> atWholeMark(Grasp grasp, Path path) {
    Plan before = grasp.before();
    Joint there = grasp.joint().withPath(path);
    Lettering lettering = Lettering.of(before);
    return JointMark.either(before, lettering, there)
        .flatMap(
            mark -> {
              double step = Pointer.wholeStep(before);
              double at = Math.round(mark.at() / step) * step;
              Point by = JointSlide.onTape(mark, at).minus(mark.place());
              return JointSlide.by(before, grasp.pick().slab(), there, by);
            });
  }

  @Override
  public Desk release(Desk desk, Pointer pointer) {
    return desk.letGo();
  }
}
