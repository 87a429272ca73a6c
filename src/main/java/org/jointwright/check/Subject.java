package org.jointwright.check;

import java.util.OptionalInt;

/** What a finding is about. */
public sealed interface Subject {
  /** A panel by its id. */
  record OnPanel(String panel) implements Subject {}

  /** A joint by its id. */
  record OnJoint(String joint) implements Subject {}

  /** An edge of the slab, or of one of its openings, by their numbers. */
  record OnEdge(OptionalInt opening, int edge) implements Subject {}

  /** A corner of the slab's outline, by the number of the edge that leaves it. */
  record AtCorner(int edge) implements Subject {}

  /** A zone of the slab that is kept clear, by its number. */
  record OnZone(int zone) implements Subject {}

  /** The slab as a whole. */
  record OnSlab() implements Subject {}

  /** A fixed object by its id, and its box-out. */
  record OnFixedObject(String fixed) implements Subject {}
}
