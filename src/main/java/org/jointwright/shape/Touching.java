package org.jointwright.shape;

/** Whether rings come so near each other that their lines are one on the ground. */
public final class Touching {
  private Touching() {}

  /**
   * Whether two rings cross, touch, or come nearer to each other than {@code clear} inches.
   *
   * <p>Only ends of edges are measured to edges: bows that pass each other closely are not seen.
   */
  public static boolean is(Ring a, Ring b, double clear) {
    Box reach = b.box().grown(clear);
    for (Edge e : a.edges()) {
      Box box = e.box().grown(clear);
      if (!box.meets(reach)) {
        continue;
      }
      for (Edge f : b.edges()) {
        if (box.meets(f.box()) && is(e, f, clear)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether two rings touch as above, or one lies in the other. */
  public static boolean orHolding(Ring a, Ring b, double clear) {
    return a.box().grown(clear).meets(b.box())
        && (is(a, b, clear)
            || a.contains(b.vertices().getFirst())
            || b.contains(a.vertices().getFirst()));
  }

  private static boolean is(Edge e, Edge f, double clear) {
    return !Crossing.of(e, f).isEmpty()
        || e.distance(f.start()) < clear
        || f.distance(e.start()) < clear
        || e.distance(f.end()) < clear
        || f.distance(e.end()) < clear;
  }
}
