package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.jointwright.shape.Box;

/** The room on the paper that is taken, so that no label stands on another. */
final class Places {
  /** The side of the squares into which the paper is parted to find what is near; pixels. */
  private static final double SQUARE = 48;

  private final Map<Long, List<Box>> taken = new HashMap<>();
  private final Map<Long, List<Box>> stakes = new HashMap<>();

  /** Whether a box is free. */
  boolean isFree(Box box) {
    return isClearOf(taken, box);
  }

  /** Whether a box is free and no stake runs through it. */
  boolean isClear(Box box) {
    return isFree(box) && isClearOf(stakes, box);
  }

  /** Notes a thin line: a number on its own paper may cover it, words without paper may not. */
  void stake(Box box) {
    put(stakes, box);
  }

  /** The first clear box among {@code wanted}, taken; empty when none is. */
  Optional<Box> takeClear(List<Box> wanted) {
    return first(wanted, this::isClear);
  }

  /** Takes a box, free or not. */
  void take(Box box) {
    put(taken, box);
  }

  /** The first free box among {@code wanted}, taken; empty when none is. */
  Optional<Box> takeFirst(List<Box> wanted) {
    return first(wanted, this::isFree);
  }

  private Optional<Box> first(List<Box> wanted, Predicate<Box> isGood) {
    for (Box box : wanted) {
      if (isGood.test(box)) {
        take(box);
        return Optional.of(box);
      }
    }
    return Optional.empty();
  }

  private static void put(Map<Long, List<Box>> squares, Box box) {
    for (long x = square(box.minX()); x <= square(box.maxX()); x++) {
      for (long y = square(box.minY()); y <= square(box.maxY()); y++) {
        squares.computeIfAbsent(key(x, y), k -> new ArrayList<>()).add(box);
      }
    }
  }

  private static boolean isClearOf(Map<Long, List<Box>> squares, Box box) {
    for (long x = square(box.minX()); x <= square(box.maxX()); x++) {
      for (long y = square(box.minY()); y <= square(box.maxY()); y++) {
        for (Box other : squares.getOrDefault(key(x, y), List.of())) {
          if (other.meets(box)) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private static long square(double pixels) {
    return (long) Math.floor(pixels / SQUARE);
  }

  private static long key(long x, long y) {
    return x << 32 ^ (y & 0xFFFFFFFFL);
  }
}
