package org.jointwright.joint;

import org.jointwright.shape.Edge;

/**
 * An edge that takes part in cutting a slab.
 *
 * @param edge where it runs
 * @param source what it belongs to
 * @param rank which source a stretch keeps where lines lie on each other: the lowest
 */
record Line(Edge edge, Source source, int rank) {
  /** The same line on another edge. */
  Line on(Edge other) {
    return new Line(other, source, rank);
  }
}
