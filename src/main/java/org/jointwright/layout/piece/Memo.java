package org.jointwright.layout.piece;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What was found out about pieces already, for the many that come again when cuts are made anew. It
 * changes no answer, only the time it takes; one slab's search uses it, on one thread.
 */
public final class Memo {
  private static final int MOST = 20_000;

  private final Map<Loop, Faults> known = new HashMap<>();

  Faults faults(Loop loop, Supplier<Faults> work) {
    Faults found = known.get(loop);
    if (found == null) {
      if (known.size() >= MOST) {
        known.clear();
      }
      found = work.get();
      known.put(loop, found);
    }
    return found;
  }
}
