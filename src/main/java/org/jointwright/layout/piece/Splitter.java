package org.jointwright.layout.piece;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/** Divides a piece along a chord. */
final class Splitter {
  private Splitter() {}

  /** The pieces that {@code chord} leaves of {@code piece}; empty when the cut is not clean. */
  static List<Piece> split(Piece piece, Chord chord, int tag) {
    Chord.Hit a = chord.start();
    Chord.Hit b = chord.end();
    if (a.loop() == b.loop()) {
      return a.loop() == 0 ? divide(piece, chord, tag) : List.of();
    }
    return chord.runs().size() > 1 ? List.of() : List.of(tie(piece, chord, tag));
  }

  private static List<Piece> divide(Piece piece, Chord chord, int tag) {
    Run left = new Run();
    left.walk(piece.outer(), chord.end(), chord.start());
    left.add(chord.runs(), tag);
    Run right = new Run();
    right.walk(piece.outer(), chord.start(), chord.end());
    right.addBack(chord.runs(), tag);
    if (right.edges.size() < 2 || left.edges.size() < 2) {
      return List.of();
    }
    Loop one = left.loop();
    Loop two = right.loop();
    if (one.doubleArea() <= 1 || two.doubleArea() <= 1) {
      return List.of();
    }
    List<Loop> holesOfOne = new ArrayList<>();
    List<Loop> holesOfTwo = new ArrayList<>();
    for (Loop hole : piece.holes()) {
      (one.surrounds(hole.edge(0).start()) ? holesOfOne : holesOfTwo).add(hole);
    }
    Piece first = piece.with(one, holesOfOne);
    Piece second = piece.with(two, holesOfTwo);
    return first.area() > 1 && second.area() > 1 ? List.of(first, second) : List.of();
  }

  /** Joins two loops by a slit. */
  private static Piece tie(Piece piece, Chord chord, int tag) {
    Chord c = chord.start().loop() == 0 || chord.end().loop() != 0 ? chord : turned(chord);
    Run run = new Run();
    run.walk(piece.loop(c.start().loop()), c.start(), c.start());
    run.add(c.runs(), tag);
    run.walk(piece.loop(c.end().loop()), c.end(), c.end());
    run.addBack(c.runs(), tag);
    List<Loop> holes = new ArrayList<>();
    for (int h = 0; h < piece.holes().size(); h++) {
      if (h + 1 != c.start().loop() && h + 1 != c.end().loop()) {
        holes.add(piece.holes().get(h));
      }
    }
    if (c.start().loop() == 0) {
      return piece.with(run.loop(), holes);
    }
    holes.add(run.loop());
    return piece.with(piece.outer(), holes);
  }

  private static Chord turned(Chord c) {
    List<Edge> back = c.runs().reversed().stream().map(Edge::reversed).toList();
    return new Chord(back, /* start= */ c.end(), /* end= */ c.start());
  }

  /** A loop in the making. */
  private static final class Run {
    private final List<Edge> edges = new ArrayList<>();
    private final List<Integer> tags = new ArrayList<>();

    void add(Edge edge, int tag) {
      edges.add(edge);
      tags.add(tag);
    }

    /** Adds the runs of a cut, the first tagged {@code tag}, the next one more. */
    void add(List<Edge> runs, int tag) {
      for (int i = 0; i < runs.size(); i++) {
        add(runs.get(i), tag + i);
      }
    }

    /** Adds the runs of a cut the other way. */
    void addBack(List<Edge> runs, int tag) {
      for (int i = runs.size() - 1; i >= 0; i--) {
        add(runs.get(i).reversed(), tag + i);
      }
    }

    /** Adds the boundary from one place on to another, all the way round when they are one. */
    void walk(Loop loop, Chord.Hit from, Chord.Hit to) {
      int n = loop.size();
      boolean sameEdge = from.edge() == to.edge();
      if (sameEdge && from.share() < to.share()) {
        between(loop, from.edge(), from.share(), from.point(), to.share(), to.point());
        return;
      }
      between(loop, from.edge(), from.share(), from.point(), 1, loop.edge(from.edge()).end());
      for (int i = 1; i <= n; i++) {
        int k = (from.edge() + i) % n;
        if (k == to.edge()) {
          between(loop, k, 0, loop.edge(k).start(), to.share(), to.point());
          return;
        }
        add(loop.edge(k), loop.tag(k));
      }
    }

    private void between(Loop loop, int k, double from, Point a, double to, Point b) {
      if (to - from <= 0 || (a.equals(b) && loop.edge(k) instanceof Segment)) {
        return;
      }
      Edge part =
          switch (loop.edge(k)) {
            case Segment s -> from == 0 && to == 1 ? s : new Segment(a, b);
            case Arc c ->
                from == 0 && to == 1 ? c : new Arc(a, b, c.centre(), c.sweep() * (to - from));
          };
      add(part, loop.tag(k));
    }

    Loop loop() {
      return new Loop(edges, tags);
    }
  }
}
