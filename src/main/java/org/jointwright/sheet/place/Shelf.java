package org.jointwright.sheet.place;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.shape.Box;

/** Figures on the page, found by place: squares of the page know which figures reach into them. */
final class Shelf {
  private static final double SQUARE = 8;

  private final List<Quad> quads = new ArrayList<>();
  private final Map<Long, List<Integer>> squares = new HashMap<>();

  int size() {
    return quads.size();
  }

  void add(Quad quad) {
    int number = quads.size();
    quads.add(quad);
    for (long square : squaresOf(quad.box())) {
      squares.computeIfAbsent(square, k -> new ArrayList<>()).add(number);
    }
  }

  /** Takes away all but the first {@code count}. */
  void keep(int count) {
    while (quads.size() > count) {
      Quad last = quads.removeLast();
      for (long square : squaresOf(last.box())) {
        List<Integer> there = squares.get(square);
        if (there != null) {
          there.removeLast();
        }
      }
    }
  }

  /** Whether one of them meets {@code quad}. */
  boolean meets(Quad quad) {
    for (long square : squaresOf(quad.box())) {
      for (int i : squares.getOrDefault(square, List.of())) {
        if (quads.get(i).meets(quad)) {
          return true;
        }
      }
    }
    return false;
  }

  /** How many of them meet {@code quad}. */
  long count(Quad quad) {
    return squaresOf(quad.box()).stream()
        .flatMap(s -> squares.getOrDefault(s, List.of()).stream())
        .distinct()
        .filter(i -> quads.get(i).meets(quad))
        .count();
  }

  private static List<Long> squaresOf(Box box) {
    List<Long> out = new ArrayList<>();
    for (long x = square(box.minX()); x <= square(box.maxX()); x++) {
      for (long y = square(box.minY()); y <= square(box.maxY()); y++) {
        out.add(x * 100_000 + y);
      }
    }
    return out;
  }

  private static long square(double at) {
    return (long) Math.floor(at / SQUARE);
  }
}
