package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.shape.Box;

/** The room on the paper that is taken, so that no label stands on another. */
final class Places {
  private final List<Box> taken = new ArrayList<>();

  /** Whether a box is free. */
  boolean isFree(Box box) {
    return taken.stream().noneMatch(t -> t.meets(box));
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
