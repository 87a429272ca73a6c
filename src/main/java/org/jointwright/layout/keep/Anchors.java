package org.jointwright.layout.keep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.shape.Point;
import org.jspecify.annotations.Nullable;

/**
 * Where ends should stand by those that are known already: they divide what lies between two known
 * places as they did before, evenly where that was meant.
 */
final class Anchors {
  /** Ends off an even division by less were brought to marks from it, in steps. */
  private static final double EVEN = 0.75;

  private static final double HAIR = 1e-6;

  private final List<Stretch> stretches;
  private final Marks marks;
  private final Map<Integer, List<Node>> byStretch = new HashMap<>();
  private final Map<Node, Double> ideal = new HashMap<>();

  Anchors(List<Stretch> stretches, Marks marks, List<Node> nodes) {
    this.stretches = stretches;
    this.marks = marks;
    for (Node n : nodes) {
      if (n.isOnRim()) {
        byStretch.computeIfAbsent(n.stretch(), k -> new ArrayList<>()).add(n);
      }
    }
    byStretch.values().forEach(l -> l.sort(Comparator.comparingDouble(Node::along)));
  }

  /** Works out anew where ends should stand, by what is known by now. */
  void update() {
    ideal.clear();
    byStretch.forEach((i, nodes) -> divide(stretches.get(i), nodes));
  }

  private void divide(Stretch stretch, List<Node> nodes) {
    double before = 0;
    double now = 0;
    List<Node> open = new ArrayList<>();
    for (Node n : nodes) {
      Point known = n.now();
      if (known == null) {
        open.add(n);
      } else {
        double at = stretch.alongNow(known);
        between(stretch, open, before, now, n.along(), at);
        before = n.along();
        now = at;
      }
    }
    between(stretch, open, before, now, stretch.lengthBefore(), stretch.length());
  }

  private void between(
      Stretch stretch, List<Node> open, double a0, double a1, double b0, double b1) {
    int parts = open.size() + 1;
    boolean still = Math.abs(a1 - a0) < HAIR && Math.abs(b1 - b0) < HAIR;
    boolean even = !still;
    for (int i = 0; i < open.size(); i++) {
      double off = Math.abs(open.get(i).along() - (a0 + (b0 - a0) * (i + 1) / parts));
      even &= off < EVEN * marks.step() && marks.wasMarked(open.get(i), stretch);
    }
    for (int i = 0; i < open.size(); i++) {
      double x = open.get(i).along();
      double share = b0 - a0 < HAIR ? 0 : (x - a0) / (b0 - a0);
      double along = a1 + (b1 - a1) * (even ? (double) (i + 1) / parts : share);
      ideal.put(open.get(i), still ? x : along);
    }
    open.clear();
  }

  /** How far along its stretch an end should stand, inches. */
  double along(Node node) {
    return ideal.getOrDefault(node, node.along());
  }

  /** Where an end should stand; null where nothing is known yet of what it stands on. */
  @Nullable Point place(Node node) {
    Point known = node.now();
    if (known != null) {
      return known;
    }
    if (node.isOnRim()) {
      return stretches.get(node.stretch()).at(along(node));
    }
    for (Strand s : node.passing()) {
      if (s.isSolved()) {
        return OnStrand.place(s, node);
      }
    }
    return null;
  }
}
