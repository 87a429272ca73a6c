package org.jointwright.layout.piece;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jspecify.annotations.Nullable;

/** A piece of a slab. Immutable; its measures are worked out once, when first asked. */
public final class Piece {
  private final Ground ground;
  private final Loop outer;
  private final List<Loop> holes;
  private final double area;
  private @Nullable Box box;
  private @Nullable Measures measures;
  private @Nullable Faults faults;
  private Memo.@Nullable Known known;

  /** A piece of {@code ground}. */
  public Piece(Ground ground, Loop outer, List<Loop> holes) {
    this.ground = ground;
    this.outer = outer;
    this.holes = List.copyOf(holes);
    double twice = outer.doubleArea();
    for (Loop hole : this.holes) {
      twice += hole.doubleArea();
    }
    this.area = twice / 2;
  }

  /** The same ground's piece with other loops. */
  Piece with(Loop newOuter, List<Loop> newHoles) {
    return new Piece(ground, newOuter, newHoles);
  }

  /** What it was cut from. */
  public Ground ground() {
    return ground;
  }

  /** Its outer loop, counter-clockwise. */
  public Loop outer() {
    return outer;
  }

  /** Its holes, clockwise. */
  public List<Loop> holes() {
    return holes;
  }

  /** How many loops it has. */
  public int loopCount() {
    return 1 + holes.size();
  }

  /** Loop 0 is the outer one. */
  public Loop loop(int i) {
    return i == 0 ? outer : holes.get(i - 1);
  }

  /** Its area, square inches. */
  public double area() {
    return area;
  }

  /** The upright box round it. */
  public Box box() {
    Box b = box;
    if (b == null) {
      b = outer.edges().getFirst().box();
      for (Edge e : outer.edges()) {
        b = b.with(e.box());
      }
      box = b;
    }
    return b;
  }

  /** Whether {@code p} lies inside. */
  public boolean contains(Point p) {
    if (!box().holds(p) || !outer.surrounds(p)) {
      return false;
    }
    for (Loop hole : holes) {
      if (hole.surrounds(p)) {
        return false;
      }
    }
    return true;
  }

  /** Its enclosing rectangle and width. */
  public Measures measures() {
    Measures m = measures;
    if (m == null) {
      Memo.Known known = known();
      m = known.measures;
      if (m == null) {
        m = Measures.of(this);
        known.measures = m;
      }
      measures = m;
    }
    return m;
  }

  /** What it breaks. */
  public Faults faults() {
    Faults f = faults;
    if (f == null) {
      Memo.Known known = known();
      f = known.faults;
      if (f == null) {
        f = Faults.of(this);
        known.faults = f;
      }
      faults = f;
    }
    return f;
  }

  private Memo.Known known() {
    Memo.Known k = known;
    if (k == null) {
      k = holes.isEmpty() ? ground.memo().of(outer) : new Memo.Known();
      known = k;
    }
    return k;
  }

  /** The pieces that {@code chord} leaves, its edges tagged {@code tag}; empty when not clean. */
  public List<Piece> split(Chord chord, int tag) {
    return Splitter.split(this, chord, tag);
  }

  /** All stretches of {@code carrier} inside this piece. */
  public List<Chord> chords(Carrier carrier) {
    List<Double> places = new ArrayList<>();
    for (int l = 0; l < loopCount(); l++) {
      for (Edge e : loop(l).edges()) {
        for (Carrier.Crossing c : carrier.crossings(e)) {
          places.add(c.place());
        }
      }
    }
    places.sort(null);
    boolean round = carrier instanceof Carrier.Circle;
    if (round && !places.isEmpty()) {
      places.add(places.getFirst() + 2 * Math.PI);
    }
    List<Chord> found = new ArrayList<>();
    for (int i = 0; i + 1 < places.size(); i++) {
      double from = places.get(i);
      double to = places.get(i + 1);
      if ((to - from) / carrier.perInch() > 1) {
        Point seed = carrier.at((from + to) / 2);
        if (contains(seed)) {
          Chord.across(this, carrier, seed).ifPresent(found::add);
        }
      }
    }
    return found;
  }
}
