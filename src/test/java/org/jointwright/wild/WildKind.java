package org.jointwright.wild;

/** What makes a slab wild. */
public enum WildKind {
  /** Sides broken by steps of a quarter inch to a foot. */
  JOGS,
  /** Notches whose corners all but touch the far side or each other. */
  NEAR_TOUCH,
  /** Two pads and a thin neck between them. */
  NECK,
  /** Many arcs, bowed in and out, meeting at any angle. */
  ARCS,
  /** Two flat arcs that meet in two tips. */
  LENS,
  /** Arcs that leave straight sides almost on a tangent. */
  SHALLOW,
  /** A curve drawn as hundreds of short chords. */
  CHORDS,
  /** A star with corners as sharp as they come. */
  STAR,
  /** Openings that nearly touch each other and the edge. */
  HOLES,
  /** Round openings in a round slab, nearly touching. */
  ROUND_HOLES,
  /** Teeth side by side. */
  COMB,
  /** A walk that turns back on itself. */
  ZIGZAG,
  /** Hardly large enough to be a slab. */
  TINY,
  /** As large as a slab may be. */
  HUGE,
  /** Corners anywhere: most cross themselves, and are refused. */
  SCRIBBLE
}
