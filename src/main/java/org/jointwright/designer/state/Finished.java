package org.jointwright.designer.state;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.ready.Strip;
import org.jointwright.designer.ready.UseGuess;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Stroke;
import org.jointwright.measure.Area;
import org.jointwright.measure.Length;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Sizes;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Use;
import org.jointwright.plan.edit.GivenEdit;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.SplitEdit;
import org.jointwright.plan.edit.ZoneEdit;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** What a drawing becomes with its last stroke, or why it becomes nothing. */
final class Finished {
  /** An end this near to a slab's edge stands on it, inches: the rules' tolerance on lengths. */
  private static final double ON_EDGE = 0.5;

  /** A strip as wide as this is for cars, inches; common practice, no source. */
  private static final double FOR_CARS = 96;

  private Finished() {}

  /** Whether {@code stroke} is the last one of the draft. */
  static boolean is(Draft draft, Stroke stroke) {
    return switch (draft.what()) {
      case SLAB, ZONE -> stroke.closes();
      case OLD_JOINT, SPLIT, JOINT -> true;
      // It may always go on; only the hand says that it is done.
      case STRIP -> false;
    };
  }

  /**
   * The desk with what was drawn.
   *
   * @param name what a new slab is called, before its number
   */
  static Desk with(Desk desk, Draft draft, Stroke stroke, String name) {
    return switch (draft.what()) {
      case SLAB -> closed(desk, draft, stroke, o -> slab(desk, o, name, UseGuess.of(o)));
      case ZONE -> closed(desk, draft, stroke, o -> zone(desk, o));
      case OLD_JOINT -> oldJoint(desk, stroke);
      case STRIP -> strip(desk, draft, name);
      case SPLIT -> split(desk, stroke);
      case JOINT -> joint(desk, stroke);
    };
  }

  /** The desk with a slab along the line drawn, or told why there is none. */
  static Desk strip(Desk desk, Draft draft, String name) {
    Optional<Outline> outline = draft.line().flatMap(l -> Strip.round(l, draft.wide()));
    return outline
        .map(o -> sound(desk, o, "window.notice.folds", x -> slab(desk, x, name, use(draft))))
        .orElseGet(() -> desk.told(Notice.trouble("window.notice.folds", List.of())));
  }

  private static Use use(Draft strip) {
    return strip.wide() < FOR_CARS ? Use.FOOT : Use.CAR;
  }

  private interface Closing {
    Desk with(Outline outline);
  }

  private static Desk closed(Desk desk, Draft draft, Stroke stroke, Closing closing) {
    return sound(desk, draft.closed(stroke), "window.notice.crossing", closing);
  }

  /** What is made of an outline, or the desk told why there is none, by the key given. */
  private static Desk sound(Desk desk, Outline outline, String trouble, Closing closing) {
    if (Sizes.isTooLarge(outline.ring())) {
      return desk.told(tooLarge());
    }
    if (!Soundness.isSound(outline)) {
      return desk.told(Notice.trouble(trouble, List.of()));
    }
    return closing.with(outline);
  }

  /** The desk with a ready shape set down where it stands, or told why it is none. */
  static Desk shape(Desk desk, Hold.HeldShape held, String name) {
    Use use = held.shape().kind().use();
    return held.shape()
        .at(held.pencil().at())
        .map(o -> sound(desk, o, "window.notice.noShape", x -> slab(desk, x, name, use)))
        .orElseGet(() -> desk.told(Notice.trouble("window.notice.noShape", List.of())));
  }

  private static Desk slab(Desk desk, Outline outline, String name, Use use) {
    String id = freeName(desk.plan(), name);
    Slab slab = Slab.of(id, outline).withUse(use);
    Desk closed = desk.letGo().edited(new SlabEdit.Add(slab));
    return closed.picking(new Pick.WholeSlab(id)).fitted();
  }

  /** A zone belongs to the slab that most of its corners and its middle lie on. */
  private static Desk zone(Desk desk, Outline outline) {
    Optional<Slab> slab =
        desk.plan().slabs().stream()
            .filter(s -> on(s, outline) > 0)
            .max(Comparator.comparingLong(s -> on(s, outline)));
    if (slab.isEmpty()) {
      return desk.told(Notice.trouble("window.notice.zoneOutside", List.of()));
    }
    String id = slab.get().id();
    Desk kept = desk.letGo().edited(new ZoneEdit.Add(id, KeepClear.of("", outline)));
    return kept.picking(new Pick.AtZone(id, slab.get().keepClear().size()));
  }

  private static long on(Slab slab, Outline outline) {
    long corners =
        outline.vertices().stream().filter(v -> slab.outline().ring().contains(v.at())).count();
    boolean middle = slab.outline().ring().contains(outline.ring().box().centre());
    return corners + (middle ? 1 : 0);
  }

  private static Desk oldJoint(Desk desk, Stroke stroke) {
    Path path = Path.of(stroke.edge());
    if (!meetsAnEdge(desk.plan(), path.start()) && !meetsAnEdge(desk.plan(), path.end())) {
      return desk.told(Notice.trouble("window.notice.oldJointApart", List.of()));
    }
    if (desk.plan().slabs().stream().anyMatch(s -> s.region().contains(stroke.edge().at(0.5)))) {
      return desk.told(Notice.trouble("window.notice.oldJointInside", List.of()));
    }
    int number = desk.plan().given().size();
    return desk.letGo()
        .edited(new GivenEdit.Add(GivenJoint.of(path)))
        .picking(new Pick.AtGiven(number));
  }

  /** The slab that the line runs through parted where the line, run on, meets its outline. */
  private static Desk split(Desk desk, Stroke stroke) {
    Optional<Desk> parted =
        Across.of(desk.plan(), stroke.edge().start(), stroke.edge().end())
            .filter(a -> a.isFree(desk.plan()))
            .map(a -> desk.letGo().edited(new SplitEdit.Split(a.slab(), a.from(), a.to())))
            .filter(d -> d.plan().slabs().stream().allMatch(s -> Soundness.isSlab(s)));
    return parted
        .map(d -> d.picking(new Pick.WholeSlab(made(d.plan(), desk.plan()))))
        .orElseGet(() -> desk.told(Notice.trouble("window.notice.notAcross", List.of())));
  }

  private static Desk joint(Desk desk, Stroke stroke) {
    Edge edge = stroke.edge();
    return JointRun.between(desk.plan(), edge.start(), edge.end())
        .map(
            found -> {
              Joint joint = Joint.of("J1", JointKind.CONTRACTION, found.path(), Purpose.SPACING);
              Desk added = desk.letGo().editedOnly(new JointEdit.Add(found.slab(), joint));
              Slab slab = added.plan().slab(found.slab()).orElseThrow();
              String id = slab.joints().getLast().id();
              return added.picking(new Pick.AtJoint(found.slab(), id));
            })
        .orElseGet(() -> desk.told(Notice.trouble("window.notice.noJoint", List.of())));
  }

  private static String made(Plan after, Plan before) {
    return after.slabs().stream()
        .map(Slab::id)
        .filter(id -> before.slab(id).isEmpty())
        .findFirst()
        .orElseThrow();
  }

  private static boolean meetsAnEdge(Plan plan, Point end) {
    return plan.slabs().stream()
        .map(Slab::region)
        .anyMatch(
            r ->
                r.outer().distance(end) <= ON_EDGE
                    || r.holes().stream().anyMatch(h -> h.distance(end) <= ON_EDGE));
  }

  static Notice tooLarge() {
    return Notice.trouble(
        "window.notice.tooLarge", List.of(), Length.inches(Sizes.LONGEST), new Area(Sizes.LARGEST));
  }

  private static String freeName(Plan plan, String name) {
    String id = name + " " + (plan.slabs().size() + 1);
    for (int n = plan.slabs().size() + 2; plan.slab(id).isPresent(); n++) {
      id = name + " " + n;
    }
    return id;
  }
}
