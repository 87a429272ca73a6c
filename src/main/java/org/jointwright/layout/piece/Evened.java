package org.jointwright.layout.piece;

import java.util.List;
import java.util.Optional;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Mirror;

/** Makes a cut on the other side of a mirror too. */
final class Evened {
  /** Ends this near to a mirror image are at it, inches. */
  private static final double SAME = 0.05;

  private Evened() {}

  /**
   * What a cut left, with its mirror image cut as well; empty where that comes out otherwise.
   *
   * @param before the draft before the cut
   * @param cut the draft after it
   */
  static Optional<Draft> of(Draft before, Draft cut, Mirror mirror) {
    int from = before.lines().size();
    int to = cut.lines().size();
    List<Laid> made = cut.lines().subList(from, to);
    if (isEven(made, made, mirror)) {
      return Optional.of(cut);
    }
    return cut.cutOnce(made.getFirst().move().mirrored(mirror))
        .filter(d -> isEven(made, d.lines().subList(to, d.lines().size()), mirror))
        .map(d -> d.following(to));
  }

  private static boolean isEven(List<Laid> some, List<Laid> others, Mirror mirror) {
    return some.stream()
        .map(l -> mirror.of(l.path()))
        .allMatch(e -> others.stream().anyMatch(o -> isSame(e, o.path())));
  }

  private static boolean isSame(Edge a, Edge b) {
    return a.at(0.5).distance(b.at(0.5)) < SAME
        && (a.start().distance(b.start()) < SAME || a.start().distance(b.end()) < SAME);
  }
}
