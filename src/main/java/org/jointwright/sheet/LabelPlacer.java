package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Pens;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Tags;
import org.jointwright.drawing.Typeface;
import org.jointwright.drawing.View;
import org.jointwright.joint.Numbering.Item;
import org.jointwright.joint.Numbering.Work;
import org.jointwright.plan.Against;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.LetteredCorner;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.Type;
import org.jointwright.sheet.place.Ground;
import org.jointwright.sheet.place.Quad;

/** Places letters, numbers and names on the plan, each where nothing else stands. */
final class LabelPlacer {

  /** How far apart the middles of two letters stand where there is room, millimetres. */
  private static final double APART = 9.5;

  /** A letter farther from its corner than this has a leader, millimetres. */
  private static final double FAR = 8.5;

  /** How far apart the places along a joint are tried, millimetres. */
  private static final double STEP = 3;

  /** From how many times as long as wide a box-out has its number beside a long side. */
  private static final double LONG = 3;

  private final Facts facts;
  private final View view;
  private final Ground ground;
  private final double number;
  private final List<Point> letters = new ArrayList<>();

  /** The filler round box-outs and what stands in them: a number would hide them. */
  private final List<Quad> boxedOut;

  private final Set<String> crowded = new TreeSet<>();
  private double loss;

  /**
   * @param number the height of the joints' numbers, millimetres
   */
  LabelPlacer(Facts facts, View view, Ground ground, double number) {
    this.number = number;
    this.facts = facts;
    this.view = view;
    this.ground = ground;
    this.boxedOut =
        Stream.concat(
                facts.plan().slabs().stream()
                    .flatMap(s -> s.boxOuts().stream())
                    .map(b -> b.outline().ring()),
                facts.plan().fixed().stream().map(f -> f.shape().ring()))
            .flatMap(r -> edges(view.on(r)))
            .toList();
  }

  private static Stream<Quad> edges(Ring ring) {
    double filler = Pens.PAPER.fillerLeast();
    // An arc is kept clear of by its chords from end to middle to end: numbers stand off anyway.
    return ring.edges().stream()
        .flatMap(
            e ->
                Stream.of(
                    Quad.line(e.start(), e.at(0.5), filler),
                    Quad.line(e.at(0.5), e.end(), filler)));
  }

  /** The corners' letters, within 8 mm of their corner where there is any room. */
  List<Mark> letters() {
    List<Mark> marks = new ArrayList<>();
    for (LetteredCorner corner : facts.lettering().corners()) {
      marks.add(letter(corner));
    }
    return marks;
  }

  private Mark letter(LetteredCorner lettered) {
    Point corner = view.on(lettered.at());
    Mark.Words words = letter(lettered, corner);
    Point middle = new Point(words.at().x(), words.at().y() - words.size() * Typeface.CAPITAL / 2);
    Point from = middle.towards(corner, Math.min(1, 3.6 / middle.distance(corner)));
    ground.add(words);
    if (isNearest(middle, corner) && middle.distance(corner) <= FAR) {
      return words;
    }
    // Beside another corner, or far from its own, a letter would be misread.
    ground.add(Quad.line(from, corner, 0.3));
    return new Mark.Group("", "", List.of(Mark.Line.of(from, corner, 0.35, Role.DIMENSION), words));
  }

  /** Whether no other corner is nearer to a letter than its own. */
  private boolean isNearest(Point middle, Point corner) {
    double own = middle.distance(corner);
    return facts.lettering().corners().stream()
        .allMatch(c -> view.on(c.at()).distance(middle) >= own - 1e-6);
  }

  private Mark.Words letter(LetteredCorner lettered, Point corner) {
    String letter = lettered.letter();
    // Letters side by side read as one word; where there is room, they stand apart.
    return letter(letter, corner, APART, new double[] {4.6, 5.6, 6.8, 8})
        .or(
            () ->
                letter(
                    letter, corner, 0, new double[] {4.6, 5.6, 6.8, 8, 10, 13, 16, 20, 25, 30, 36}))
        .orElseGet(
            () -> {
              loss += 20;
              crowd(lettered.at());
              return Type.CORNER_TIGHT.at(corner.x(), corner.y() - 2, letter, Anchor.MIDDLE);
            });
  }

  private Optional<Mark.Words> letter(String letter, Point corner, double apart, double[] reaches) {
    for (double reach : reaches) {
      for (Type type : List.of(Type.CORNER, Type.CORNER_TIGHT)) {
        for (int i = 0; i < 24; i++) {
          // Diagonal places first: they are clear of both sides and of their chains.
          double angle = Math.PI / 4 + Math.PI / 2 * (i % 4) + Math.PI / 12 * steps(i / 4);
          Point middle = corner.plus(new Point(reach, 0).turned(angle));
          Mark.Words words =
              type.at(middle.x(), middle.y() + type.capital / 2, letter, Anchor.MIDDLE);
          if (ground.isFree(words)
              && letters.stream().allMatch(l -> l.distance(middle) >= apart)
              && canBeTold(middle, corner)) {
            letters.add(middle);
            return Optional.of(words);
          }
        }
      }
    }
    return Optional.empty();
  }

  /** Whether a letter is nearest to its corner, or has room for a leader to it. */
  private boolean canBeTold(Point middle, Point corner) {
    if (middle.distance(corner) <= FAR && isNearest(middle, corner)) {
      return true;
    }
    Point from = middle.towards(corner, Math.min(1, 3.6 / middle.distance(corner)));
    return ground.isFreeOfTexts(Quad.line(from, corner, 0.3));
  }

  private void crowd(Point corner) {
    facts.plan().slabs().stream()
        .filter(
            s ->
                s.outline().ring().distance(corner) < Sides.ON
                    || s.openings().stream()
                        .anyMatch(o -> o.outline().ring().distance(corner) < Sides.ON))
        .forEach(s -> crowded.add(s.id()));
  }

  /** The slabs on which a label found no place. */
  Set<String> crowded() {
    return crowded;
  }

  /** How much is not as good as it should be: numbers on leaders, labels on other things. */
  double loss() {
    return loss;
  }

  private static int steps(int i) {
    return i % 2 == 0 ? i / 2 : -(i + 1) / 2;
  }

  /** The numbers of the joints, on their lines, and of the box-outs beside them. */
  List<Mark> numbers() {
    Map<Integer, Mark> marks = new TreeMap<>();
    // Short joints first: they have the fewest places.
    facts.numbering().items().stream()
        .sorted(Comparator.comparingDouble(i -> i.path().length()))
        .forEach(i -> marks.put(i.number(), number(i)));
    return List.copyOf(marks.values());
  }

  private Mark number(Item item) {
    return item.work() == Work.BOX_OUT ? beside(item) : on(item, view.on(item.path()));
  }

  private Mark on(Item item, Path path) {
    String text = String.valueOf(item.number());
    Point size = Tags.size(text, item.work(), number);
    Point best = null;
    long crossed = Long.MAX_VALUE;
    for (double share : shares(path)) {
      Point at = along(path, share);
      Quad room = Quad.round(at, size.x() + 1, size.y() + 1);
      if (ground.isFreeOfTexts(room) && boxedOut.stream().noneMatch(room::meets)) {
        long lines = ground.linesThrough(room);
        if (lines < crossed) {
          crossed = lines;
          best = at;
        }
      }
    }
    if (best != null) {
      return tag(item, best, size);
    }
    List<Point> feet = new ArrayList<>();
    double[] shares = shares(path);
    for (int i = 0; i < shares.length; i += 1 + shares.length / 12) {
      feet.add(along(path, shares[i]));
    }
    return led(item, feet, size);
  }

  /** Places along a path from its middle outwards, to both sides by turns. */
  private static double[] shares(Path path) {
    int steps = Math.max(8, (int) (path.length() / STEP));
    double[] shares = new double[steps - 1];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = 0.5 + steps(i) / (double) steps;
    }
    return shares;
  }

  private static Point along(Path path, double share) {
    double left = path.length() * share;
    for (Edge e : path.edges()) {
      if (left <= e.length()) {
        return e.at(left / e.length());
      }
      left -= e.length();
    }
    return path.end();
  }

  private Mark beside(Item item) {
    Box box = view.boxOf(item.boxOut().orElseThrow().outline().ring());
    String text = String.valueOf(item.number());
    Point size = Tags.size(text, Work.BOX_OUT, number);
    Optional<Point> near = alongLong(box, size);
    if (near.isPresent()) {
      return tag(item, near.get(), size);
    }
    double reach = Math.hypot(box.width(), box.height()) / 2 + size.x() / 2;
    for (double more : new double[] {0, 1.5, 3}) {
      for (int i = 0; i < 12; i++) {
        int round = i / 4;
        double angle = Math.PI / 4 + i * Math.PI / 2 + round * Math.PI / 6;
        Point at = box.centre().plus(new Point(reach * 0.85 + more, 0).turned(angle));
        if (ground.isFree(Quad.round(at, size.x() + 1, size.y() + 1))) {
          return tag(item, at, size);
        }
      }
    }
    return led(item, List.of(box.centre()), size);
  }

  /**
   * A place close to a long side of a box-out. Round the corners of a long one, such as a trench, a
   * number would stand far from it.
   */
  private Optional<Point> alongLong(Box box, Point size) {
    double longest = Math.max(box.width(), box.height());
    if (longest < LONG * Math.min(box.width(), box.height()) || longest < LONG * size.x()) {
      return Optional.empty();
    }
    boolean lies = box.width() >= box.height();
    for (double off : new double[] {1.2, 2.4, 4}) {
      for (int i = 0; i < 18; i++) {
        double share = steps(i / 2) / 10.0;
        double away = i % 2 == 0 ? 1 : -1;
        Point from =
            lies
                ? new Point(share * longest, away * (box.height() / 2 + size.y() / 2 + off))
                : new Point(away * (box.width() / 2 + size.x() / 2 + off), share * longest);
        Point at = box.centre().plus(from);
        if (ground.isFree(Quad.round(at, size.x() + 1, size.y() + 1))) {
          return Optional.of(at);
        }
      }
    }
    return Optional.empty();
  }

  /** A number that finds no room where it belongs stands off with a leader to its line. */
  private Mark led(Item item, List<Point> feet, Point size) {
    for (double reach = 6; reach < 90; reach += 2) {
      for (Point from : feet) {
        for (int i = 0; i < 24; i++) {
          Point at = from.plus(new Point(reach, 0).turned(Math.PI / 12 * i + 0.3));
          if (ground.isFree(Quad.round(at, size.x() + 1, size.y() + 1))
              && ground.isFreeOfTexts(Quad.line(from, at, 0.3))) {
            loss += 1;
            return led(item, from, at, size);
          }
        }
      }
    }
    loss += 20;
    crowded.add(item.slab());
    return tag(item, feet.getFirst(), size);
  }

  private Mark led(Item item, Point from, Point at, Point size) {
    Path line = Path.straight(from, at);
    ground.add(Quad.line(from, at, 0.3));
    return new Mark.Group(
        "", "", List.of(Mark.Line.of(line, 0.35, Role.DIMENSION), tag(item, at, size)));
  }

  private Mark tag(Item item, Point at, Point size) {
    ground.add(Quad.round(at, size.x() + 0.8, size.y() + 0.8));
    return Tags.tag(at, String.valueOf(item.number()), item.work(), number);
  }

  /** The slabs' names and thicknesses, in one line or two, where a panel has room. */
  List<Mark> names() {
    List<Mark> marks = new ArrayList<>();
    for (Slab slab : facts.plan().slabs()) {
      String thick = facts.print(slab.thickness().inches());
      String name = Lines.fitting(slab.id(), Type.NAME, 40);
      Optional<List<Mark.Words>> words =
          name(slab, List.of(facts.say("slab", name, thick)))
              .or(() -> name(slab, List.of(name, thick)));
      words.ifPresent(
          w -> {
            w.forEach(ground::add);
            marks.addAll(w);
          });
    }
    return marks;
  }

  /** Which detail shows a slab, on it or beside it with a leader. */
  List<Mark> details(List<String> slabs) {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < slabs.size(); i++) {
      Slab slab = facts.plan().slab(slabs.get(i)).orElseThrow();
      Point amid = view.boxOf(slab.outline().ring()).centre();
      String text = facts.say("detail.tag", String.valueOf(i + 1));
      pointed(text, amid).ifPresent(marks::addAll);
    }
    return marks;
  }

  private Optional<List<Mark>> pointed(String text, Point amid) {
    for (double reach = 4; reach < 90; reach += 2) {
      for (int i = 0; i < 24; i++) {
        Point way = new Point(1, 0).turned(Math.PI / 12 * i + 0.2);
        Point end = amid.plus(way.times(reach));
        Anchor anchor = way.x() >= 0 ? Anchor.START : Anchor.END;
        Mark.Words words =
            Type.NAME.at(end.x() + (way.x() >= 0 ? 1 : -1), end.y() + 1.7, text, anchor);
        Quad leader = Quad.line(amid, end, 0.3);
        if (ground.isFree(Quad.of(words, 0.8)) && ground.isFreeOfTexts(leader)) {
          ground.add(words);
          ground.add(leader);
          return Optional.of(List.of(Mark.Line.of(amid, end, 0.35, Role.DIMENSION), words));
        }
      }
    }
    return Optional.empty();
  }

  /** What the slabs are against, said beside the edge where there is room. */
  List<Mark> besides() {
    List<Mark> marks = new ArrayList<>();
    for (Slab slab : facts.plan().slabs()) {
      List<Edge> edges = slab.outline().ring().edges();
      for (int i = 0; i < edges.size(); i++) {
        if (slab.edge(i).against() != Against.OPEN) {
          String word = facts.say("against." + slab.edge(i).against().name());
          beside(view.on(edges.get(i)), word)
              .ifPresent(
                  w -> {
                    ground.add(w);
                    marks.add(w);
                  });
        }
      }
    }
    return marks;
  }

  private Optional<Mark.Words> beside(Edge edge, String word) {
    for (double off : new double[] {4, 6, 8.5}) {
      for (double t : new double[] {0.5, 0.35, 0.65, 0.2, 0.8}) {
        // y runs down: the far side from the slab is on the left.
        Point at = edge.at(t).plus(edge.direction(t).left().times(off));
        for (double turn : new double[] {0, 90}) {
          Point base = turn == 0 ? at.plus(new Point(0, 1.5)) : at.plus(new Point(1.5, 0));
          Mark.Words words = Type.NOTE.turned(base, word, Anchor.MIDDLE, turn);
          if (ground.isFree(Quad.of(words, 0.8))) {
            return Optional.of(words);
          }
        }
      }
    }
    return Optional.empty();
  }

  /** The names of the zones that are kept clear, in them or beside their long sides. */
  List<Mark> zones() {
    List<Mark> marks = new ArrayList<>();
    for (Slab slab : facts.plan().slabs()) {
      for (KeepClear zone : slab.keepClear()) {
        String name = Lines.fitting(zone.name(), Type.NOTE, 40);
        List<Edge> sides = new ArrayList<>(zone.outline().ring().edges());
        sides.sort(Comparator.comparingDouble(e -> -e.length()));
        sides.stream()
            .filter(e -> !name.isEmpty())
            .flatMap(e -> alongside(slab, view.on(e), name).stream())
            .findFirst()
            .ifPresent(
                w -> {
                  ground.add(w);
                  marks.add(w);
                });
      }
    }
    return marks;
  }

  /** Words along the line of an edge, on either side of it, on the slab. */
  private Optional<Mark.Words> alongside(Slab slab, Edge edge, String word) {
    for (double off : new double[] {2.4, -2.4, 4, -4, 6, -6}) {
      for (double t : new double[] {0.5, 0.35, 0.65, 0.2, 0.8}) {
        Point u = edge.direction(t);
        double turn = Math.toDegrees(Math.atan2(-u.y(), u.x()));
        // Read from the bottom or from the right, never upside down.
        double readable = turn > 90.5 ? turn - 180 : turn <= -89.5 ? turn + 180 : turn;
        Point down = new Point(0, 1).turned(-Math.toRadians(readable));
        Point middle = edge.at(t).plus(u.left().times(off));
        Point base = middle.plus(down.times(Type.NOTE.capital / 2));
        Mark.Words words = Type.NOTE.turned(base, word, Anchor.MIDDLE, readable);
        if (slab.region().contains(view.back(middle)) && ground.isFree(Quad.of(words, 0.5))) {
          return Optional.of(words);
        }
      }
    }
    return Optional.empty();
  }

  private Optional<List<Mark.Words>> name(Slab slab, List<String> lines) {
    Box box = view.boxOf(slab.outline().ring());
    int steps = 24;
    for (int k = 0; k < steps * steps; k++) {
      // From the middle outwards, in both directions by turns.
      double x = box.centre().x() + box.width() * 0.5 * steps(k % steps) / (steps / 2.0);
      double y = box.centre().y() + box.height() * 0.5 * steps(k / steps) / (steps / 2.0);
      if (!slab.region().contains(view.back(new Point(x, y)))) {
        continue;
      }
      List<Mark.Words> words = new ArrayList<>();
      for (int i = 0; i < lines.size(); i++) {
        words.add(Type.NAME.at(x, y + i * 5.2, lines.get(i), Anchor.MIDDLE));
      }
      if (words.stream().allMatch(w -> ground.isFree(Quad.of(w, 1.2)))) {
        return Optional.of(words);
      }
    }
    return Optional.empty();
  }
}
