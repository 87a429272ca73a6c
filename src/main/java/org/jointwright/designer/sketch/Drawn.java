package org.jointwright.designer.sketch;

/** What a drawing becomes once it is finished. */
public enum Drawn {
  /** A slab: a closed outline. */
  SLAB,
  /** A zone of a slab that is kept clear of joints: a closed outline too. */
  ZONE,
  /** A joint of concrete that is there already: one line. */
  OLD_JOINT
}
