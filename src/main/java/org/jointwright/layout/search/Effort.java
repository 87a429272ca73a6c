package org.jointwright.layout.search;

/**
 * How far a search goes. Counted, never timed.
 *
 * @param width how many drafts the beam keeps
 * @param children how many of each draft's children it keeps
 * @param cuts how many cuts one beam may try
 * @param climbs how many drafts of each kind are climbed from
 * @param climbed how many cuts one climb may make
 * @param remade how many cuts may go into taking the best draft apart and filling it anew
 * @param thorough whether places are dragged, and a second beam tries the rarer moves too: kites at
 *     sharp corners, joints from open end to open end
 */
public record Effort(
    int width, int children, int cuts, int climbs, int climbed, int remade, boolean thorough) {
  /** Quick enough to follow a hand that drags. */
  public static final Effort FIRST = new Effort(12, 8, 25_000, 4, 12_000, 0, false);

  /** What a layout that stays is worth. */
  public static final Effort FULL = new Effort(12, 8, 25_000, 4, 12_000, 40_000, true);

  /** The beam of rare moves: many more drafts look alike, so that more are kept. */
  Effort rare() {
    return new Effort(40, 12, 50_000, climbs, climbed, remade, thorough);
  }
}
