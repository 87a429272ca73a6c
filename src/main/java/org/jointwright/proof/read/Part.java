package org.jointwright.proof.read;

/** Which figure of a row, a sentence or a drawing is meant. */
public enum Part {
  /** The whole length of a side, a joint, a strip or a diagonal. */
  LENGTH,
  /** A mark on a side. */
  MARK,
  /** Where a joint starts. */
  FROM,
  /** Where a joint ends. */
  TO,
  /** Where a strip of filler lies. */
  WHERE,
  /** How far an arc bows. */
  BOW,
  /** The radius of an arc. */
  RADIUS,
  /** The chord of an arc. */
  CHORD,
  /** How far off the string a point stands. */
  OFF,
  /** How wide a cut or a strip is. */
  WIDTH,
  /** How deep a cut, a strip or the digging is. */
  DEPTH,
  /** How deep the base is. */
  BASE,
  /** How thick a slab or an edge is. */
  THICKNESS,
  /** How thick the slab of a thicker edge is. */
  SLAB,
  /** A size of a box-out. */
  SIZE,
  /** Where a box-out stands. */
  PLACE,
  /** A figure of the scale. */
  SCALE
}
