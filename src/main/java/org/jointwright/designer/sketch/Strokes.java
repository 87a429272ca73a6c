package org.jointwright.designer.sketch;

import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.shape.Point;

/** The edge that a sentence, or the pencil, means for the draft as it is. */
public final class Strokes {
  /** The first corner of a slab typed on blank paper. */
  private static final Point ORIGIN = new Point(0, 0);

  /** The way a first side goes where nothing says another. */
  private static final Point RIGHT = new Point(1, 0);

  private Strokes() {}

  /** The stroke that {@code said} means; empty where it says none, or not yet. */
  public static Optional<Stroke> of(Draft draft, Said said) {
    return switch (said) {
      case Said.Side side -> side(draft, side);
      case Said.Close close -> closing(draft, close.bulge());
      case Said.Silent silent -> byPencil(draft);
      case Said.Unfinished unfinished -> of(draft, unfinished.soFar());
      case Said.Unclear unclear -> Optional.empty();
    };
  }

  /** The stroke to where the pencil stands. */
  public static Optional<Stroke> byPencil(Draft draft) {
    if (draft.last().isEmpty() || draft.pencil().isEmpty()) {
      return Optional.empty();
    }
    Pencil pencil = draft.pencil().get();
    boolean closes = pencil.closes() && draft.canClose();
    Stroke stroke = Stroke.straight(draft.last().get(), pencil.at(), closes);
    return stroke.isNothing() ? Optional.empty() : Optional.of(stroke);
  }

  /** Where the draft's next edge starts: its last corner, or where a first side would begin. */
  public static Point from(Draft draft) {
    return draft.last().or(() -> draft.pencil().map(Pencil::at)).orElse(ORIGIN);
  }

  /** The direction in which a side is understood to run. */
  public static Point direction(Draft draft, Said.Turn turn) {
    Optional<Point> heading = draft.heading();
    return switch (turn) {
      case Said.Turn.Unsaid unsaid -> pointed(draft);
      case Said.Turn.By by -> turned(heading.orElse(RIGHT), by.degrees());
      case Said.Turn.OnPaper paper -> turned(RIGHT, paper.degrees());
      case Said.Turn.Slanted slanted ->
          new Point(slanted.over().inches(), slanted.up().inches()).unit();
    };
  }

  /** A square turn is exact, so that figures typed come back as they were. */
  private static Point turned(Point way, double degrees) {
    if (degrees == 0) {
      return way;
    }
    if (degrees == 180) {
      return way.times(-1);
    }
    if (degrees == 90) {
      return way.left();
    }
    return degrees == -90 ? way.left().times(-1) : way.turned(Math.toRadians(degrees));
  }

  private static Point pointed(Draft draft) {
    if (draft.last().isPresent() && draft.pencil().isPresent()) {
      Point way = draft.pencil().get().at().minus(draft.last().get());
      if (way.norm() > 1) {
        return way.unit();
      }
    }
    // Nothing points: round the slab counter-clockwise, as its corners are lettered.
    return draft.heading().map(Point::left).orElse(RIGHT);
  }

  /** Whether a straight side would run back over the one before it: that is no outline. */
  public static boolean runsBack(Draft draft, Said.Side side) {
    Optional<Point> heading = draft.heading();
    return side.bulge().isEmpty()
        && heading.isPresent()
        && heading.get().dot(direction(draft, side.turn())) < -1 + 1e-9;
  }

  private static Optional<Stroke> side(Draft draft, Said.Side side) {
    if (runsBack(draft, side)) {
      return Optional.empty();
    }
    Point from = from(draft);
    Point way =
        side.turn() instanceof Said.Turn.Slanted(Length over, Length up)
            ? new Point(over.inches(), up.inches())
            : direction(draft, side.turn()).times(side.length().inches());
    Point to = from.plus(way);
    boolean closes =
        draft.canClose() && draft.first().map(f -> f.distance(to) < 1.0 / 16).orElse(false);
    return Optional.of(bent(draft, from, to, side.bulge(), closes));
  }

  private static Optional<Stroke> closing(Draft draft, Optional<Length> bulge) {
    boolean canBend = !draft.what().isLine() && draft.placed().size() == 2 && bulge.isPresent();
    boolean can = draft.canClose() || canBend;
    if (!can) {
      return Optional.empty();
    }
    Point from = draft.last().orElseThrow();
    return Optional.of(bent(draft, from, draft.first().orElseThrow(), bulge, true));
  }

  private static Stroke bent(
      Draft draft, Point from, Point to, Optional<Length> bulge, boolean closes) {
    if (bulge.isEmpty() || bulge.get().inches() == 0 || from.distance(to) == 0) {
      return Stroke.straight(from, to, closes);
    }
    // The slab lies on the left of an outline drawn counter-clockwise, so out is the right.
    Point left = to.minus(from).unit().left();
    Point out = draft.isClockwise(to) ? left : left.times(-1);
    Point via = from.towards(to, 0.5).plus(out.times(bulge.get().inches()));
    return new Stroke(from, Optional.of(via), to, closes);
  }
}
