package org.jointwright.joint;

/** What a side of a panel runs along. */
public sealed interface Source {
  /** Edge {@code edge} of the slab's outline. */
  record OnOutline(int edge) implements Source {}

  /** Edge {@code edge} of opening {@code opening}. */
  record OnOpening(int opening, int edge) implements Source {}

  /** Edge {@code edge} of the box-out round a fixed object. */
  record OnBoxOut(String fixed, int edge) implements Source {}

  /** A joint. */
  record OnJoint(String joint) implements Source {}
}
