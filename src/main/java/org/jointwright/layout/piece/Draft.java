package org.jointwright.layout.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.JointKind;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Mirror;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;
import org.jspecify.annotations.Nullable;

/** A slab as far as it is cut: its pieces, and the cuts in the order they were made. Immutable. */
public final class Draft {
  /** How far beyond a joint the next piece is looked for, inches. */
  private static final double STEP = 0.25;

  /** A joint that passes another's end nearer than this is brought to it, inches. */
  private static final double BESIDE = 1.2;

  /** The engine cuts off nothing smaller, square inches: a climb would trade faults for it. */
  private static final double SLIVER = 40;

  /** A bend this near to a joint stands on it, inches. */
  private static final double ON_JOINT = 0.05;

  /** How far from its bend an arm is seeded, inches. */
  private static final double ARM = 3;

  /** Drafts of more pieces do not remember what they were: each would hold on to all before it. */
  private static final int REMEMBERED = 200;

  private static final double[] NUDGES = {0, 1.1, -1.3};

  private final Ground ground;
  private final List<Piece> pieces;
  private final List<Laid> lines;
  private @Nullable Tally tally;
  private @Nullable List<Move> moves;

  /** The draft before the last cut of the engine's, where that is known and not large. */
  private @Nullable Draft before;

  private Draft(Ground ground, List<Piece> pieces, List<Laid> lines) {
    this.ground = ground;
    this.pieces = pieces;
    this.lines = lines;
  }

  /** The uncut slab. */
  public static Draft of(Ground ground) {
    return new Draft(ground, List.of(ground.piece()), List.of());
  }

  /**
   * A slab that was cut elsewhere.
   *
   * @param pieces its pieces, their tags the numbers of the cuts
   */
  public static Draft of(Ground ground, List<Piece> pieces, List<Laid> lines) {
    return new Draft(ground, List.copyOf(pieces), List.copyOf(lines));
  }

  /** What is being cut. */
  public Ground ground() {
    return ground;
  }

  /** The pieces. */
  public List<Piece> pieces() {
    return pieces;
  }

  /** The cuts; a piece's tags are their numbers. */
  public List<Laid> lines() {
    return lines;
  }

  /** The figures of this draft. */
  public Tally tally() {
    Tally t = tally;
    if (t == null) {
      t = Tally.of(this);
      tally = t;
    }
    return t;
  }

  /** The number of the piece that holds {@code p}, or -1. */
  public int find(Point p) {
    for (int i = 0; i < pieces.size(); i++) {
      if (pieces.get(i).contains(p)) {
        return i;
      }
    }
    return -1;
  }

  /** This draft after a cut; empty when the cut is not clean. */
  public Optional<Draft> cut(Move move) {
    Optional<Draft> one = cutOnce(move);
    Optional<Draft> cut =
        ground.mirror().isEmpty()
            ? one
            : one.flatMap(d -> Evened.of(this, d, ground.mirror().get()));
    if (cut.isPresent() && pieces.size() < REMEMBERED) {
      cut.get().before = this;
    }
    return cut;
  }

  /** The cut without its mirror image. */
  Optional<Draft> cutOnce(Move move) {
    return cut(move, JointKind.CONTRACTION, false, Double.NaN, Double.NaN);
  }

  /** The lines from number {@code from} on as such that were made with the ones before. */
  Draft following(int from) {
    List<Laid> all = new ArrayList<>(lines.subList(0, from));
    lines.subList(from, lines.size()).forEach(l -> all.add(l.following()));
    return new Draft(ground, pieces, all);
  }

  /** The same joints of the user's on a ground where every cut is made on both sides of a line. */
  public Draft mirroredAt(Mirror line) {
    Draft d = of(ground.mirroredAt(line));
    for (Laid l : lines) {
      d = d.hold(l.path(), l.kind());
    }
    return d;
  }

  /** This draft after as many of the cuts as are clean. */
  public Draft cutAll(List<Move> moves) {
    Draft d = this;
    for (Move m : moves) {
      d = d.cut(m).orElse(d);
    }
    return d;
  }

  /**
   * The same as {@code from.cutAll(moves)} where this draft came of {@code from}: cuts that both
   * begin with are not made again.
   *
   * @param from the draft that all cuts of this one were made in
   */
  public Draft recut(Draft from, List<Move> moves) {
    List<Move> own = moves();
    int same = 0;
    while (same < Math.min(own.size(), moves.size()) && own.get(same).equals(moves.get(same))) {
      same++;
    }
    Draft d = this;
    while (d.moves().size() > same && d.before != null) {
      d = d.before;
    }
    int made = d.moves().size();
    return made > same ? from.cutAll(moves) : d.cutAll(moves.subList(made, moves.size()));
  }

  /**
   * What a cut of this draft takes, counted in cuts of a small one: pieces must be looked through.
   */
  public int weight() {
    return 1 + pieces.size() / 40;
  }

  /** The numbers of the lines that slant where all beside them is square. */
  public List<Integer> slanted() {
    return Slants.of(this);
  }

  /** The uncut slab with the user's joints of this draft in it. */
  public Draft base() {
    int held = 0;
    while (held < lines.size() && lines.get(held).locked()) {
      held++;
    }
    if (held == lines.size()) {
      return this;
    }
    Draft d = of(ground);
    for (Laid l : lines.subList(0, held)) {
      d = d.hold(l.path(), l.kind());
    }
    return d;
  }

  /** The cuts that are the engine's to move, in order. */
  public List<Move> moves() {
    List<Move> m = moves;
    if (m == null) {
      m = lines.stream().filter(l -> !l.locked() && !l.follows()).map(Laid::move).toList();
      moves = m;
    }
    return m;
  }

  /** The line that cut {@code i} of {@link #moves} made; the first of two where it bends. */
  public Laid line(int i) {
    int left = i;
    for (Laid l : lines) {
      if (!l.locked() && !l.follows()) {
        if (left == 0) {
          return l;
        }
        left--;
      }
    }
    throw new IndexOutOfBoundsException(i);
  }

  /** This draft with a joint of the user's in it, cut on to the edges of the pieces it ends in. */
  public Draft hold(Edge path, JointKind kind) {
    Carrier carrier = Carriers.of(path);
    Point middle = path.at(0.5);
    double a = carrier.place(path.start());
    double b = carrier.place(path.end());
    double m = carrier.place(middle);
    boolean round = carrier instanceof Carrier.Circle;
    double turn = round ? 2 * Math.PI : 0;
    double low = Math.min(relative(a, m, turn), relative(b, m, turn));
    double high = Math.max(relative(a, m, turn), relative(b, m, turn));
    return cut(new Move(carrier, middle, Move.Reach.PIECE), kind, true, low, high).orElse(this);
  }

  private static double relative(double place, double middle, double turn) {
    double d = place - middle;
    return turn > 0 ? Math.IEEEremainder(d, turn) : d;
  }

  private Optional<Draft> cut(Move move, JointKind kind, boolean locked, double low, double high) {
    if (move.carrier() instanceof Bent bent && isOnJoint(bent.bend())) {
      return armByArm(move, bent);
    }
    Optional<Chord> found = Optional.empty();
    int first = -1;
    // A seed may stand on a joint laid since: look a little to both sides of it then.
    for (int i = 0; i < NUDGES.length && found.isEmpty(); i++) {
      double place = move.carrier().place(move.seed());
      Point seed = move.carrier().at(place + NUDGES[i] * move.carrier().perInch());
      first = find(seed);
      if (first >= 0) {
        found = Chord.across(pieces.get(first), move.carrier(), seed);
      }
    }
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Optional<Move> met = locked ? Optional.empty() : meetingOthers(first, move, found.get());
    if (met.isPresent()) {
      return cut(met.get(), kind, false, low, high);
    }
    Work work = new Work(move, low, high);
    if (!work.split(first, found.get())) {
      return Optional.empty();
    }
    Chord.Hit end = work.extend(first, found.get().end(), true);
    Chord.Hit start = work.extend(first, found.get().start(), false);
    boolean beside = !endNear(start).equals(start.point()) || !endNear(end).equals(end.point());
    if (start.point().equals(end.point()) || (beside && !locked)) {
      return Optional.empty();
    }
    List<Laid> all = new ArrayList<>(lines);
    if (move.carrier() instanceof Bent bent) {
      int one = lines.size();
      Edge in = new Segment(start.point(), bent.bend());
      Edge out = new Segment(bent.bend(), end.point());
      if (!locked && (ground.zones().bar(in) || ground.zones().bar(out))) {
        return Optional.empty();
      }
      all.add(new Laid(move, in, start.tag(), one + 1, kind, locked, /* follows= */ false));
      all.add(new Laid(move, out, one, end.tag(), kind, locked, /* follows= */ true));
    } else {
      Edge path = move.carrier().edge(start.point(), end.point());
      if (!locked && ground.zones().bar(path)) {
        return Optional.empty();
      }
      all.add(new Laid(move, path, start.tag(), end.tag(), kind, locked, /* follows= */ false));
    }
    return Optional.of(new Draft(ground, work.pieces, all));
  }

  private boolean isOnJoint(Point p) {
    return lines.stream().anyMatch(l -> l.path().distance(p) < ON_JOINT);
  }

  /** A line that bends where it crosses a joint which is there already: an arm on either side. */
  private Optional<Draft> armByArm(Move move, Bent bent) {
    Draft d = this;
    for (boolean last : new boolean[] {false, true}) {
      Optional<Draft> cut = d.arm(move, bent, last);
      if (cut.isEmpty()) {
        return Optional.empty();
      }
      d = cut.get();
    }
    return Optional.of(d);
  }

  private Optional<Draft> arm(Move move, Bent bent, boolean last) {
    Carrier.Line line = new Carrier.Line(bent.bend(), bent.direction(last ? 1 : -1));
    Point seed = line.at(last ? ARM : -ARM);
    int number = find(seed);
    Optional<Chord> found =
        number < 0 ? Optional.empty() : Chord.across(pieces.get(number), line, seed);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Chord.Hit at = last ? found.get().start() : found.get().end();
    Work work = new Work(new Move(line, seed, move.reach()), Double.NaN, Double.NaN);
    if (at.point().distance(bent.bend()) > ON_JOINT || !work.split(number, found.get())) {
      return Optional.empty();
    }
    Chord.Hit end = work.extend(number, last ? found.get().end() : found.get().start(), last);
    Edge path = last ? new Segment(at.point(), end.point()) : new Segment(end.point(), at.point());
    if (!endNear(end).equals(end.point()) || ground.zones().bar(path)) {
      return Optional.empty();
    }
    List<Laid> all = new ArrayList<>(lines);
    int from = last ? at.tag() : end.tag();
    int to = last ? end.tag() : at.tag();
    all.add(new Laid(move, path, from, to, JointKind.CONTRACTION, /* locked= */ false, last));
    return Optional.of(new Draft(ground, work.pieces, all));
  }

  /** The cut from joint end to joint end where it passes within a hair of such ends. */
  private Optional<Move> meetingOthers(int number, Move move, Chord chord) {
    if (move.reach() != Move.Reach.PIECE || move.carrier() instanceof Carrier.Circle) {
      return Optional.empty();
    }
    Point a = endNear(chord.start());
    Point b = endNear(chord.end());
    double off = a.distance(chord.start().point()) + b.distance(chord.end().point());
    if (off < 1e-6 || a.distance(b) < 12) {
      return Optional.empty();
    }
    Move through =
        move.carrier() instanceof Bent bent
            ? Move.bent(a, bent.bend(), b)
            : Move.between(a, b, move.reach());
    return Chord.across(pieces.get(number), through.carrier(), through.seed())
        .filter(c -> c.start().point().distance(a) < 1e-6 && c.end().point().distance(b) < 1e-6)
        .map(c -> through);
  }

  /** The end of another joint that a place on a joint nearly meets, or the place itself. */
  private Point endNear(Chord.Hit hit) {
    if (hit.tag() < 0) {
      return hit.point();
    }
    Point best = hit.point();
    double least = BESIDE;
    for (Laid l : lines) {
      for (boolean last : new boolean[] {false, true}) {
        double d = l.end(last).distance(hit.point());
        if (d <= 1e-6) {
          return hit.point();
        }
        if (d < least) {
          best = l.end(last);
          least = d;
        }
      }
    }
    return best;
  }

  /** A cut in the making. */
  private final class Work {
    private final Move move;
    private final double low;
    private final double high;
    private final List<Piece> pieces = new ArrayList<>(Draft.this.pieces);

    Work(Move move, double low, double high) {
      this.move = move;
      this.low = low;
      this.high = high;
    }

    boolean split(int number, Chord chord) {
      List<Piece> parts = pieces.get(number).split(chord, tag(chord));
      boolean own = Double.isNaN(low);
      if (parts.isEmpty()
          || (own && parts.size() > 1 && parts.stream().anyMatch(p -> p.area() < SLIVER))) {
        return false;
      }
      pieces.set(number, parts.getFirst());
      if (parts.size() > 1) {
        pieces.add(number + 1, parts.getLast());
      }
      return true;
    }

    /** What the first run of a chord is tagged: one more beyond the bend of a bent cut. */
    private int tag(Chord chord) {
      boolean beyond =
          move.carrier() instanceof Bent b
              && chord.runs().size() == 1
              && b.place(chord.path().at(0.5)) > 0;
      return lines.size() + (beyond ? 1 : 0);
    }

    private boolean goesOn(Chord.Hit hit, boolean ahead) {
      if (hit.tag() < 0) {
        return false;
      }
      if (!Double.isNaN(low)) {
        double at = move.carrier().place(hit.point()) - move.carrier().place(move.seed());
        if (move.carrier() instanceof Carrier.Circle) {
          at = Math.IEEEremainder(at, 2 * Math.PI);
        }
        double step = 2 * STEP * move.carrier().perInch();
        return ahead ? at < high - step : at > low + step;
      }
      return move.goesBeyond(hit.point());
    }

    /** Goes on from {@code from}, in piece {@code first}, as far as the move reaches. */
    Chord.Hit extend(int first, Chord.Hit from, boolean ahead) {
      Chord.Hit hit = from;
      int at = first;
      for (int guard = 0; guard < 400 && goesOn(hit, ahead); guard++) {
        double place = move.carrier().place(hit.point());
        double step = STEP * move.carrier().perInch();
        Point beyond = move.carrier().at(ahead ? place + step : place - step);
        int next = findNear(at, beyond);
        if (next < 0) {
          return hit;
        }
        Optional<Chord> chord = Chord.across(pieces.get(next), move.carrier(), beyond);
        if (chord.isEmpty()) {
          return hit;
        }
        Chord.Hit near = ahead ? chord.get().start() : chord.get().end();
        if (near.point().distance(hit.point()) > STEP || !split(next, chord.get())) {
          return hit;
        }
        hit = ahead ? chord.get().end() : chord.get().start();
        at = next;
      }
      return hit;
    }

    /** The piece that holds {@code p}, looked for from {@code number} both ways: it is near. */
    private int findNear(int number, Point p) {
      int last = pieces.size() - 1;
      for (int off = 0; off <= Math.max(number, last - number); off++) {
        if (number + off <= last && pieces.get(number + off).contains(p)) {
          return number + off;
        }
        if (off > 0 && number - off >= 0 && pieces.get(number - off).contains(p)) {
          return number - off;
        }
      }
      return -1;
    }
  }
}
