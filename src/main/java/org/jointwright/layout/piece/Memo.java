package org.jointwright.layout.piece;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.shape.Edge;
import org.jspecify.annotations.Nullable;

/**
 * What was found out about pieces already, for the many that come again when cuts are made anew. It
 * changes no answer, only the time it takes; one slab's search uses it, on one thread.
 */
public final class Memo {
  private static final int MOST = 20_000;

  private final Map<Key, Known> known = new HashMap<>();
  private @Nullable Sides sides;

  /** What is known of a piece without holes. */
  static final class Known {
    @Nullable Faults faults;
    @Nullable Measures measures;
  }

  /**
   * What tells pieces apart: which of their edges run along one joint, not the joint's number,
   * which changes when another is left out.
   */
  private record Key(List<Edge> edges, List<Integer> tags, int hash) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Key k
          && hash == k.hash
          && edges.equals(k.edges)
          && tags.equals(k.tags);
    }

    @Override
    public int hashCode() {
      return hash;
    }
  }

  /** What the edges of the ground that this is of say of directions. */
  Sides sides(Ground ground) {
    Sides s = sides;
    if (s == null) {
      s = Sides.of(ground);
      sides = s;
    }
    return s;
  }

  Known of(Loop loop) {
    Integer[] tags = renumbered(loop);
    long hash = 0;
    for (int i = 0; i < tags.length; i++) {
      Edge e = loop.edges().get(i);
      hash = 31 * hash + Double.doubleToLongBits(e.start().x());
      hash = 31 * hash + Double.doubleToLongBits(e.start().y());
      hash = 31 * hash + tags[i];
      hash ^= hash >>> 29;
    }
    Key key = new Key(loop.edges(), List.of(tags), Long.hashCode(hash));
    Known found = known.get(key);
    if (found == null) {
      if (known.size() >= MOST) {
        known.clear();
      }
      found = new Known();
      known.put(key, found);
    }
    return found;
  }

  /** The tags, joints numbered in the order in which the loop meets them. */
  private static Integer[] renumbered(Loop loop) {
    Integer[] tags = loop.tags().toArray(Integer[]::new);
    int next = 0;
    for (int i = 0; i < tags.length; i++) {
      int tag = loop.tag(i);
      if (tag >= 0) {
        int k = 0;
        while (loop.tag(k) != tag) {
          k++;
        }
        if (k == i) {
          tags[i] = next++;
        } else {
          tags[i] = tags[k];
        }
      }
    }
    return tags;
  }
}
