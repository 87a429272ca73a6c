package org.jointwright.designer.state;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Stroke;
import org.jointwright.measure.Area;
import org.jointwright.measure.Length;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Sizes;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.GivenEdit;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.ZoneEdit;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** What a drawing becomes with its last stroke, or why it becomes nothing. */
final class Finished {
  /** An end this near to a slab's edge stands on it, inches: the rules' tolerance on lengths. */
  private static final double ON_EDGE = 0.5;

  private Finished() {}

  /** Whether {@code stroke} is the last one of the draft. */
  static boolean is(Draft draft, Stroke stroke) {
    return switch (draft.what()) {
      case SLAB, ZONE -> stroke.closes();
      case OLD_JOINT -> true;
    };
  }

  /**
   * The desk with what was drawn.
   *
   * @param name what a new slab is called, before its number
   */
  static Desk with(Desk desk, Draft draft, Stroke stroke, String name) {
    return switch (draft.what()) {
      case SLAB -> closed(desk, draft, stroke, o -> slab(desk, o, name));
      case ZONE -> closed(desk, draft, stroke, o -> zone(desk, o));
      case OLD_JOINT -> oldJoint(desk, stroke);
    };
  }

  private interface Closing {
    Desk with(Outline outline);
  }

  private static Desk closed(Desk desk, Draft draft, Stroke stroke, Closing closing) {
    Outline outline = draft.closed(stroke);
    if (Sizes.isTooLarge(outline.ring())) {
      return desk.told(tooLarge());
    }
    if (!Soundness.isSound(outline)) {
      return desk.told(Notice.trouble("window.notice.crossing", List.of()));
    }
    return closing.with(outline);
  }

  private static Desk slab(Desk desk, Outline outline, String name) {
    String id = freeName(desk.plan(), name);
    Desk closed = desk.letGo().edited(new SlabEdit.Add(Slab.of(id, outline)));
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
