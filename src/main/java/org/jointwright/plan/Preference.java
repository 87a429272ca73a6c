package org.jointwright.plan;

/** Which of several good layouts the user wants. */
public sealed interface Preference {
  /** The fewest feet to cut: what nobody chose otherwise. */
  Preference SHORTEST = Overall.SHORTEST;

  /** A preference that names nothing on the slab. */
  enum Overall implements Preference {
    /** The fewest feet to cut. */
    SHORTEST,
    /** Panels as square as they come. */
    SQUAREST
  }

  /**
   * Joints in line with an edge and square to it.
   *
   * @param edge the number of the edge of the slab's outline; an arc counts by its chord
   * @param kept what the file said besides
   */
  record LinedUpWith(int edge, Kept kept) implements Preference {
    /** In line with an edge, of which the file says nothing more. */
    public LinedUpWith(int edge) {
      this(edge, Kept.NOTHING);
    }
  }
}
