package org.jointwright.designer.state;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.sketch.Pencil;
import org.jointwright.designer.sketch.Said;
import org.jointwright.designer.sketch.Stroke;
import org.jointwright.designer.sketch.Strokes;
import org.jointwright.designer.sketch.Typing;
import org.jointwright.plan.Photo;
import org.jointwright.plan.Sizes;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;

/** Drawing an outline, by hand and by typing. */
public final class Drafting {
  /** A hand so near to the last corner points at it; pixels. */
  private static final double AT_LAST = 6;

  private Drafting() {}

  /** A desk on which a slab is begun. */
  public static Desk begin(Desk desk) {
    return begin(desk, Drawn.SLAB);
  }

  /** A desk on which something is begun; what belongs to slabs only where there is one. */
  public static Desk begin(Desk desk, Drawn what) {
    if (what != Drawn.SLAB && what != Drawn.STRIP && desk.plan().slabs().isEmpty()) {
      return desk.told(Notice.trouble("window.notice.slabFirst", List.of()));
    }
    return desk.withStep(what == Drawn.JOINT ? Step.JOINTS : Step.OUTLINE)
        .picking(Pick.NOTHING)
        .withHand(InHand.drawing(Draft.begun(what, desk.bare().isMetric())));
  }

  /** The pencil led to {@code pointer}. */
  public static Desk lead(Desk desk, Pointer pointer) {
    return desk.draft()
        .map(d -> desk.withHand(InHand.drawing(d.withPencil(pencil(desk, d, pointer)))))
        .orElse(desk);
  }

  /** The pencil pushed by so many inches, as by the arrow keys; nothing draws it then. */
  public static Desk push(Desk desk, Point by) {
    return desk.draft()
        .map(
            d -> {
              Point from = d.pencil().map(Pencil::at).or(d::last).orElseGet(() -> start(desk, d));
              return inSight(
                  desk.withHand(InHand.drawing(d.withPencil(Pencil.free(from.plus(by)).byKeys()))));
            })
        .orElse(desk);
  }

  /** The pencil led to the next place that draws it, or the one before, round and round. */
  public static Desk jump(Desk desk, boolean forward) {
    if (desk.draft().isEmpty()) {
      return desk;
    }
    Draft draft = desk.draft().get();
    List<Pencil> stops = Attraction.drawing(desk.plan(), draft, desk.viewport().inches(1)).stops();
    if (stops.isEmpty()) {
      return desk;
    }
    int now = -1;
    for (int i = 0; i < stops.size() && now < 0; i++) {
      boolean isHere = draft.pencil().filter(stops.get(i).byKeys()::equals).isPresent();
      now = isHere ? i : -1;
    }
    int next = now < 0 ? (forward ? 0 : stops.size() - 1) : now + (forward ? 1 : stops.size() - 1);
    Pencil there = stops.get(next % stops.size()).byKeys();
    return inSight(desk.withHand(InHand.drawing(draft.withPencil(there))));
  }

  /** Where the pencil comes to stand. */
  public static Pencil pencil(Desk desk, Draft draft, Pointer pointer) {
    return pointer.isFree()
        ? Pencil.free(pointer.plan())
        : Attraction.drawing(desk.plan(), draft, desk.viewport().inches(1)).at(pointer.plan());
  }

  /** A corner set down where the pencil stands: the first, the next, or the last. */
  public static Desk click(Desk desk, Pointer pointer, String name) {
    Draft draft = desk.draft().orElse(Draft.EMPTY);
    Draft led = draft.withPencil(pencil(desk, draft, pointer)).withTyped("");
    if (led.line().isPresent() && led.what() == Drawn.STRIP && isAtLast(desk, led, pointer)) {
      return Finished.strip(desk, led, name);
    }
    if (led.last().isEmpty()) {
      return desk.withHand(InHand.drawing(led.begunAt(led.pencil().orElseThrow().at())));
    }
    return Strokes.byPencil(led).map(s -> placed(desk, led, s, name)).orElse(desk);
  }

  /** Whether a hand points at the corner set down last: a second click there ends a line. */
  private static boolean isAtLast(Desk desk, Draft draft, Pointer pointer) {
    Point last = desk.viewport().toPaper(draft.last().orElseThrow());
    return last.distance(pointer.paper()) <= AT_LAST;
  }

  /** A sentence typed on. */
  public static Desk type(Desk desk, String typed) {
    Draft draft = desk.draft().orElse(Draft.EMPTY);
    Desk drawing = desk.draft().isPresent() ? desk : begin(desk);
    return drawing.withHand(InHand.drawing(draft.withTyped(typed)));
  }

  /** The sentence edited; the first sign of one begins a slab. */
  public static Desk typing(Desk desk, UnaryOperator<Typing> edit) {
    Draft draft = desk.draft().orElse(Draft.EMPTY);
    Typing now = edit.apply(draft.typing());
    if (now.equals(draft.typing())) {
      return desk;
    }
    Desk drawing = desk.draft().isPresent() ? desk : begin(desk);
    return drawing.withHand(InHand.drawing(draft.with(now)));
  }

  /** What was typed is placed, if it says an edge; else nothing changes. */
  public static Desk enter(Desk desk, Said said, String name) {
    Draft draft = desk.draft().orElse(Draft.EMPTY);
    boolean isLed = draft.pencil().filter(Pencil::isByKeys).isPresent();
    if (said instanceof Said.Silent && isLed) {
      return placedByKeys(desk, draft, name);
    }
    if (said instanceof Said.Unfinished) {
      // The space ends the word: what it cannot be is said beneath it.
      return type(desk, draft.typed() + " ");
    }
    boolean ends = said instanceof Said.Silent || said instanceof Said.Close;
    if (ends && draft.what() == Drawn.STRIP && draft.line().isPresent()) {
      return Finished.strip(desk, draft, name);
    }
    if (said instanceof Said.Silent && draft.last().isPresent() && draft.canClose()) {
      return desk;
    }
    Draft begun = draft.last().isPresent() ? draft : draft.begunAt(start(desk, draft));
    return Strokes.of(begun, said).map(s -> placed(desk, begun, s, name)).orElse(desk);
  }

  /** A corner set down where keys led the pencil. */
  private static Desk placedByKeys(Desk desk, Draft draft, String name) {
    return draft.last().isEmpty()
        ? desk.withHand(InHand.drawing(draft.begunAt(draft.pencil().orElseThrow().at())))
        : Strokes.byPencil(draft).map(s -> placed(desk, draft, s, name)).orElse(desk);
  }

  /**
   * Where a first side that is typed begins: at the pencil, or clear of the slabs, or on the photo.
   */
  public static Point start(Desk desk, Draft draft) {
    return draft
        .pencil()
        .map(Pencil::at)
        .or(() -> Extent.ofSlabs(desk).map(Drafting::beside))
        .or(() -> desk.plan().photo().map(Photo::middle))
        .orElse(new Point(0, 0));
  }

  /** A place clear of what is drawn. */
  static Point beside(Box box) {
    double clear = 48;
    return new Point(box.maxX() + clear, box.minY());
  }

  /** One step back: sentence, corner, the draft itself. */
  public static Desk back(Desk desk) {
    return desk.draft()
        .map(d -> d.back().map(b -> desk.withHand(InHand.drawing(b))).orElseGet(desk::putAway))
        .orElse(desk);
  }

  private static Desk placed(Desk desk, Draft draft, Stroke stroke, String name) {
    if (stroke.isNothing()) {
      return desk;
    }
    Box reach =
        draft.placed().stream()
            .map(v -> Box.of(v.at(), v.at()))
            .reduce(Box.of(stroke.to(), stroke.to()), Box::with);
    if (Sizes.isTooLong(reach)) {
      return desk.told(Finished.tooLarge());
    }
    return Finished.is(draft, stroke)
        ? Finished.with(desk, draft, stroke, name)
        : inSight(desk.withHand(InHand.drawing(draft.placed(stroke))));
  }

  /** The paper fitted anew when a corner has gone out of sight. */
  static Desk inSight(Desk desk) {
    Optional<Point> last = desk.draft().flatMap(Draft::last);
    Box clear = desk.viewport().clear();
    // What is typed next stands beside the corner: there must be room for it.
    Box room = clear.grown(-Math.min(clear.width(), clear.height()) / 8);
    boolean isOut = last.filter(p -> !room.holds(p)).isPresent();
    if (!isOut) {
      return desk;
    }
    // Room for as much again, so that not every corner moves the paper.
    return Extent.of(desk)
        .map(b -> b.grown(Math.max(b.width(), b.height()) / 3))
        .map(b -> desk.withSight(s -> s.with(s.viewport().fitted(b), true)))
        .orElse(desk);
  }
}
