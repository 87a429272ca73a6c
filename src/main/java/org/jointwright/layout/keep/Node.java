package org.jointwright.layout.keep;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Point;
import org.jspecify.annotations.Nullable;

/** A place where joints end, and where it is found to be now. */
final class Node {
  private final Point before;
  private final int stretch;
  private final double along;
  private final List<Strand> ending = new ArrayList<>(2);
  private final List<Strand> passing = new ArrayList<>(2);
  private @Nullable Point now;

  /**
   * A place.
   *
   * @param before where it was
   * @param stretch the number of the stretch it stood on, or -1
   * @param along how far along that, inches
   */
  Node(Point before, int stretch, double along) {
    this.before = before;
    this.stretch = stretch;
    this.along = along;
  }

  Point before() {
    return before;
  }

  int stretch() {
    return stretch;
  }

  boolean isOnRim() {
    return stretch >= 0;
  }

  double along() {
    return along;
  }

  /** The strands that end here. */
  List<Strand> ending() {
    return ending;
  }

  /** The strands that run on through here. */
  List<Strand> passing() {
    return passing;
  }

  @Nullable Point now() {
    return now;
  }

  /** Sets where it is; as good as where it was is where it was, to the last figure. */
  void settle(Point p) {
    now = p.distance(before) < Strand.HAIR ? before : p;
  }
}
