package org.jointwright.designer.sketch;

/** What a drawing becomes once it is finished. */
public enum Drawn {
  /** A slab: a closed outline. */
  SLAB,
  /** A zone of a slab that is kept clear of joints: a closed outline too. */
  ZONE,
  /** A joint of concrete that is there already: one line. */
  OLD_JOINT,
  /** A joint of a slab: one line. */
  JOINT,
  /** Where a slab is parted in two: one line. */
  SPLIT,
  /** A drive or a walk: the line along its middle, of one side or more. */
  STRIP;

  /** Whether it is a line with two ends, rather than a closed outline. */
  public boolean isLine() {
    return this != SLAB && this != ZONE;
  }
}
