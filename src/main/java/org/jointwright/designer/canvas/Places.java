package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.shape.Box;

/** The room on the paper that is taken, so that no label stands on another. */
final class Places {
  private final List<Box> taken = new ArrayList<>();
  private final List<Box> stakes = new ArrayList<>();

  /** Whether a box is free. */
  boolean isFree(Box box) {
    return taken.stream().noneMatch(t -> t.meets(box));
  }

  /** Whether a box is free and no stake runs through it. */
  boolean isClear(Box box) {
    return isFree(box) && stakes.stream().noneMatch(t -> t.meets(box));
  }

  /** Notes a thin line: a number on its own paper may cover it, words without paper may not. */
  void stake(Box box) {
    stakes.add(box);
  }

  /** The first clear box among {@code wanted}, taken; empty when none is. */
  Optional<Box> takeClear(List<Box> wanted) {
    Optional<Box> clear = wanted.stream().filter(this::isClear).findFirst();
    clear.ifPresent(this::take);
    return clear;
  }

  /** Takes a box, free or not. */
  void take(Box box) {
    taken.add(box);
  }

  /** The first free box among {@code wanted}, taken; empty when none is. */
  Optional<Box> takeFirst(List<Box> wanted) {
    Optional<Box> free = wanted.stream().filter(this::isFree).findFirst();
    free.ifPresent(this::take);
    return free;
  }
}
