package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Tags;
import org.jointwright.drawing.Typeface;
import org.jointwright.drawing.View;
import org.jointwright.drawing.Weight;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Numbering;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.KeepClear;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;
import org.jointwright.text.Words;

/** What is written on the plan: corner letters, joint numbers, the names of the slabs. */
final class Labels {
  private static final double LETTER = 15;
  private static final double NUMBER = 12;
  private static final double NAME = 15;
  private static final double QUIET = 13;
  private static final double SMALL_OPENING = 64;

  /** Panels that are mostly smaller than this leave no room for numbers; pixels. */
  private static final double CROWDED = 18;

  /** What a handle of something picked takes, its line with it; pixels. */
  private static final double HANDLE = 14;

  /** How far off its line a number stands where there is no room on it; pixels. */
  private static final double[] OFF = {10, 18, 28, 40};

  /** Nearer to its line than this a leader strikes whatever is written on that; pixels. */
  private static final double CLEAR = 6;

  /** A letter stands no farther from its corner, its own size in; pixels. */
  private static final double FARTHEST = 56;

  private static final double[] DOWN = {0.5, 0.3, 0.7, 0.15, 0.85};

  private static final double[] ACROSS = {0.5, 0.35, 0.65, 0.2, 0.8};

  private static final double[] ALONG = {0.5, 0.4, 0.6, 0.32, 0.68, 0.25, 0.75, 0.18, 0.82};

  private final Known known;
  private final Layout layout;
  private final View view;
  private final Box paper;
  private final Places places;
  private final Words words;
  private final Pick picked;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Edge> rims = new ArrayList<>();

  private Labels(Known known, Desk desk, Places places, Words words) {
    this.known = known;
    layout = known.layout();
    view = desk.viewport().view();
    paper = desk.viewport().paper();
    picked = desk.picked();
    this.places = places;
    this.words = words;
  }

  static List<Mark> of(Known known, Desk desk, Places places, Words words) {
    Labels labels = new Labels(known, desk, places, words);
    labels.nailheads();
    labels.objects();
    labels.pickedLine();
    labels.letters();
    labels.numbers();
    labels.names();
    labels.zones();
    return labels.marks;
  }

  private void nailheads() {
    for (SlabLayout s : layout.slabs()) {
      for (Joint j : s.joints()) {
        if (j.locked()) {
          places.take(around(view.on(j.path().middle()), 16, 16));
        }
      }
    }
  }

  /** A box-out that reaches out to an edge has its object anywhere: no number may cover it. */
  private void objects() {
    layout.plan().fixed().forEach(f -> places.take(view.boxOf(f.shape().ring())));
  }

  /** Along what is picked nothing else is written: its halo would cover it. */
  private void pickedLine() {
    PickMarks.path(layout.plan(), picked)
        .ifPresent(
            p -> {
              Path path = view.on(p);
              for (double s = 0; s <= path.length(); s += 8) {
                places.take(around(at(path, s / path.length()), 6, 6));
              }
              if (PickMarks.hasHandles(picked)) {
                places.take(around(path.start(), HANDLE, HANDLE));
                places.take(around(path.end(), HANDLE, HANDLE));
              }
            });
  }

  private void letters() {
    for (Corners.Corner corner : known.corners()) {
      Point at = view.on(corner.at());
      boolean isLost = corner.opening().filter(o -> isCrowded(o.slab())).isPresent();
      if (isLost || !paper.grown(2 * LETTER).holds(at)) {
        continue;
      }
      Point out = view.heading(isInSmallOpening(corner) ? corner.out().times(-1) : corner.out());
      double half = Typeface.of(Weight.BOLD).width(corner.letter(), LETTER) / 2;
      // An opening’s letters may not stand on the next side either: there are others to look at.
      boolean isOfOpening = corner.opening().isPresent();
      List<Edge> lines = isOfOpening ? rims() : corner.lines().stream().map(view::on).toList();
      List<Edge> cuts = cutsAt(corner.at());
      List<Box> wanted = new ArrayList<>();
      List<Box> crossed = new ArrayList<>();
      List<Box> struck = new ArrayList<>();
      for (double off : new double[] {17, 28, 40}) {
        for (double turn : new double[] {0, 0.5, -0.5, 1, -1, 1.6, -1.6, Math.PI}) {
          Point p = at.plus(out.turned(turn).times(off));
          boolean isClear = lines.stream().allMatch(l -> l.distance(p) > half + 2);
          boolean isUncut = cuts.stream().allMatch(l -> l.distance(p) > half + 2);
          (isClear ? isUncut ? wanted : crossed : struck).add(around(p, 2 * half + 3, 14));
        }
      }
      if (!isOfOpening) {
        wanted.addAll(crossed);
        wanted.addAll(struck);
      }
      Optional<Box> free = places.takeFirst(wanted);
      if (isOfOpening && free.isEmpty()) {
        continue;
      }
      Box box = free.orElse(wanted.getFirst());
      Point base = new Point(box.centre().x(), box.centre().y() + LETTER * Typeface.CAPITAL / 2);
      marks.add(
          Mark.Words.level(base, corner.letter(), LETTER, Weight.BOLD, Anchor.MIDDLE, Role.TEXT));
    }
  }

  /** The joints near a corner, on the paper. */
  private List<Edge> cutsAt(Point corner) {
    Box near = Box.of(corner, corner).grown(FARTHEST / view.scale());
    List<Edge> cuts = new ArrayList<>();
    for (SlabLayout s : known.lines().slabs()) {
      for (Joint j : s.joints()) {
        for (Edge e : j.path().edges()) {
          if (e.box().meets(near)) {
            cuts.add(view.on(e));
          }
        }
      }
    }
    return cuts;
  }

  /** All that runs round slabs and openings, on the paper. */
  private List<Edge> rims() {
    if (rims.isEmpty()) {
      for (SlabLayout s : layout.slabs()) {
        s.slab().outline().ring().edges().forEach(e -> rims.add(view.on(e)));
        s.slab()
            .openings()
            .forEach(o -> o.outline().ring().edges().forEach(e -> rims.add(view.on(e))));
      }
    }
    return rims;
  }

  /** An opening too small on the paper for the letters of its corners has them outside. */
  private boolean isInSmallOpening(Corners.Corner corner) {
    return corner
        .opening()
        .map(Corners.InSlab::box)
        .filter(b -> Math.min(b.width(), b.height()) * view.scale() < SMALL_OPENING)
        .isPresent();
  }

  private void numbers() {
    Box seen = view.back(paper);
    for (Numbering.Item item : known.numbering().items()) {
      if (isCrowded(item.slab())
          || item.path().edges().stream().noneMatch(e -> e.box().meets(seen))
          || isPicked(item)) {
        continue;
      }
      Optional<Path> path =
          item.boxOut()
              .map(b -> new Path(b.outline().ring().edges()))
              .or(() -> item.joints().stream().findFirst().map(Joint::path));
      path.ifPresent(p -> number(item, inSight(view.on(p))));
    }
  }

  /** Where panels are smaller than numbers these would hide what they name. */
  private boolean isCrowded(String slab) {
    return known.panel(slab) * view.scale() < CROWDED;
  }

  /** As much of a straight line as is on the paper, so that its number is in sight too. */
  private Path inSight(Path path) {
    if (path.edges().size() > 1 || !(path.edges().getFirst() instanceof Segment s)) {
      return path;
    }
    return Clip.of(s, paper).map(Path::of).orElse(path);
  }

  /** What is picked carries its number in chalk, above the plan. */
  private boolean isPicked(Numbering.Item item) {
    return picked instanceof Pick.AtJoint j
        && item.boxOut().isEmpty()
        && item.slab().equals(j.slab())
        && item.joints().stream().anyMatch(x -> x.id().equals(j.joint()));
  }

  private void number(Numbering.Item item, Path path) {
    String number = Integer.toString(item.number());
    double capital = NUMBER * Typeface.CAPITAL;
    Point size = Tags.size(number, item.work(), capital);
    boolean isRing = item.boxOut().isPresent();
    if (path.length() < (isRing ? 40 : size.x())) {
      return;
    }
    List<Box> wanted = new ArrayList<>();
    if (isRing) {
      wanted.addAll(beside(new Ring(path.edges()).box(), size));
    }
    for (double share : ALONG) {
      wanted.add(around(at(path, share), size.x() + 2, size.y() + 2));
    }
    places
        .takeFirst(wanted)
        .ifPresentOrElse(
            box -> marks.add(Tags.tag(box.centre(), number, item.work(), capital)),
            () -> led(path, size, foot -> Tags.tag(foot, number, item.work(), capital)));
  }

  /** A number that finds no room on its line stands beside it, with a leader to it. */
  private void led(Path path, Point size, Function<Point, Mark> tag) {
    for (double off : OFF) {
      for (double share : ALONG) {
        Point foot = at(path, share);
        Point across = heading(path, share).left();
        for (Point way : List.of(across, across.times(-1))) {
          double reach = Math.abs(way.x()) * size.x() / 2 + Math.abs(way.y()) * size.y() / 2;
          Point to = foot.plus(way.times(off + reach));
          if (isOpen(foot, to, off)
              && places.takeFirst(List.of(around(to, size.x() + 2, size.y() + 2))).isPresent()) {
            marks.add(Mark.Line.of(Path.straight(foot, to), 1, Role.CONTRACTION));
            marks.add(tag.apply(to));
            return;
          }
        }
      }
    }
  }

  /** Whether a leader from a line to a number strikes nothing that is written between them. */
  private boolean isOpen(Point foot, Point to, double off) {
    double length = foot.distance(to);
    for (double s = CLEAR; s < Math.max(off, CLEAR); s += CLEAR / 2) {
      Point p = foot.towards(to, s / length);
      if (!places.isFree(around(p, 2, 2))) {
        return false;
      }
    }
    return true;
  }

  private static Point heading(Path path, double share) {
    return at(path, Math.min(1, share + 0.01)).minus(at(path, share - 0.01)).unit();
  }

  /** Off the sides of a box-out, between its joints: on its line the number would cover it. */
  private static List<Box> beside(Box ring, Point size) {
    double right = ring.width() / 4 + size.x() / 2 + 1;
    double down = ring.height() / 4 + size.y() / 2 + 1;
    List<Box> found = new ArrayList<>();
    for (Point way :
        List.of(new Point(1, 1), new Point(-1, 1), new Point(1, -1), new Point(-1, -1))) {
      Point at = ring.centre().plus(new Point(way.x() * right, way.y() * down));
      found.add(around(at, size.x(), size.y()));
    }
    return found;
  }

  private static Point at(Path path, double share) {
    double left = path.length() * share;
    for (Edge e : path.edges()) {
      if (left <= e.length() && e.length() > 0) {
        return e.at(left / e.length());
      }
      left -= e.length();
    }
    return path.end();
  }

  private void names() {
    for (SlabLayout s : layout.slabs()) {
      String thick = words.say("window.plan.thick", s.slab().thickness());
      double name = Typeface.of(Weight.SEMIBOLD).width(s.slab().id(), NAME) + 10;
      double both = Math.max(name, Typeface.of(Weight.REGULAR).width(thick, QUIET) + 10);
      if (!room(s, both, 40, box -> name(s.slab().id(), thick, box))) {
        room(s, name, 20, box -> nameOnly(s.slab().id(), box));
      }
    }
  }

  /** The names of the zones that are kept clear: in them, or beside them where they are narrow. */
  private void zones() {
    for (SlabLayout s : layout.slabs()) {
      for (KeepClear zone : s.slab().keepClear()) {
        if (zone.name().isEmpty()) {
          continue;
        }
        Box box = view.boxOf(zone.outline().ring());
        double width = Typeface.of(Weight.REGULAR).width(zone.name(), QUIET) + 6;
        List<Box> wanted = new ArrayList<>();
        for (double right : ACROSS) {
          for (double down : DOWN) {
            Point p = new Point(box.minX() + right * box.width(), box.minY() + down * box.height());
            wanted.add(around(p, width, QUIET + 4));
          }
        }
        wanted.removeIf(b -> !isInside(Region.of(zone.outline().ring()), b));
        for (double down : DOWN) {
          double y = box.minY() + down * box.height();
          wanted.add(around(new Point(box.maxX() + width / 2 + 4, y), width, QUIET + 4));
          wanted.add(around(new Point(box.minX() - width / 2 - 4, y), width, QUIET + 4));
        }
        places
            .takeClear(wanted.stream().filter(b -> isInside(s.slab().region(), b)).toList())
            .ifPresent(
                b ->
                    marks.add(
                        Mark.Words.level(
                            b.centre().plus(new Point(0, QUIET * Typeface.CAPITAL / 2)),
                            zone.name(),
                            QUIET,
                            Weight.REGULAR,
                            Anchor.MIDDLE,
                            Role.QUIET_TEXT)));
      }
    }
  }

  /** Finds room for a box inside a panel, the largest panel first, and writes there. */
  private boolean room(SlabLayout s, double width, double height, Consumer<Box> write) {
    Box seen = view.back(paper);
    for (Known.Room room : known.rooms(s)) {
      boolean isTooSmall =
          room.box().width() * view.scale() < width || room.box().height() * view.scale() < height;
      if (isTooSmall || !room.box().meets(seen)) {
        continue;
      }
      Box within = view.boxOf(room.region().outer());
      for (double down : new double[] {0.5, 0.28, 0.72}) {
        for (double right : new double[] {0.5, 0.3, 0.7}) {
          Point at =
              new Point(
                  within.minX() + right * within.width(), within.minY() + down * within.height());
          Box box = around(at, width, height);
          if (isOnPaper(box) && isInside(room.region(), box) && places.isClear(box)) {
            places.take(box);
            write.accept(box);
            return true;
          }
        }
      }
    }
    return false;
  }

  private void name(String name, String thick, Box box) {
    Point c = box.centre();
    marks.add(
        Mark.Words.level(
            new Point(c.x(), c.y() - 3), name, NAME, Weight.SEMIBOLD, Anchor.MIDDLE, Role.TEXT));
    marks.add(
        Mark.Words.level(
            new Point(c.x(), c.y() + 15),
            thick,
            QUIET,
            Weight.REGULAR,
            Anchor.MIDDLE,
            Role.QUIET_TEXT));
  }

  private void nameOnly(String name, Box box) {
    Point base = box.centre().plus(new Point(0, 5));
    marks.add(Mark.Words.level(base, name, NAME, Weight.SEMIBOLD, Anchor.MIDDLE, Role.TEXT));
  }

  private boolean isOnPaper(Box box) {
    return box.minX() >= paper.minX()
        && box.maxX() <= paper.maxX()
        && box.minY() >= paper.minY()
        && box.maxY() <= paper.maxY();
  }

  private boolean isInside(Region room, Box box) {
    for (double x : new double[] {box.minX(), box.centre().x(), box.maxX()}) {
      for (double y : new double[] {box.minY(), box.maxY()}) {
        if (!room.contains(view.back(new Point(x, y)))) {
          return false;
        }
      }
    }
    return true;
  }

  private static Box around(Point p, double width, double height) {
    return new Box(p.x() - width / 2, p.y() - height / 2, p.x() + width / 2, p.y() + height / 2);
  }
}
