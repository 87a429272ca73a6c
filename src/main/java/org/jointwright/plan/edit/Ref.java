package org.jointwright.plan.edit;

/**
 * A vertex, and with it the edge that leaves it.
 *
 * @param slab the slab's id
 * @param ring {@link #OUTLINE}, or the number of an opening
 * @param index the vertex's number in its ring
 */
public record Ref(String slab, int ring, int index) {
  /** The slab's own outline. */
  public static final int OUTLINE = -1;

  /** A vertex of a slab's outline. */
  public static Ref outline(String slab, int index) {
    return new Ref(slab, OUTLINE, index);
  }
}
