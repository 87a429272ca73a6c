package org.jointwright.plan;

/** What a joint is there for. */
public enum Purpose {
  /** To keep the panels short enough. */
  SPACING,
  /** It starts from an inside corner. */
  INSIDE_CORNER,
  /** It runs from the corner of a box-out. */
  BOX_OUT,
  /** Filler along an edge that something holds, or round a fixed object. */
  ISOLATION,
  /** Two slabs of the plan meet here. */
  SHARED_EDGE,
  /** A pour stops here, at the limit of what is placed in one. */
  POUR,
  /** It cuts the tip off a sharp corner: the rules' corner joint. */
  CORNER
}
