package org.jointwright.drawing;

/**
 * What a mark means. The canvas and the sheets each choose the colour; shape and width are here.
 */
public enum Role {
  /** The ground round the job. */
  GROUND,
  /** The sheet of the plan, and what shows through openings and box-outs. */
  PAPER,
  /** The face of a panel. */
  PANEL,
  /** A building beside a slab. */
  BUILDING,
  /** The street beside a slab. */
  STREET,
  /** The edge of a slab. */
  OUTLINE,
  /** The wall or curb line of what stands beside a slab. */
  WALL,
  /** What people see along the edge of a slab: a garage door, a step. */
  FEATURE,
  /** A joint that is there already beside a slab. */
  GIVEN,
  /** The edge of a zone where no joint may run. */
  ZONE,
  /** A joint that is tooled or sawn. */
  CONTRACTION,
  /** A joint where one pour ends. */
  CONSTRUCTION,
  /** The lines and hatching of filler. */
  FILLER_LINE,
  /** The body of filler. */
  FILLER,
  /** A post, a drain, a tree. */
  FIXED,
  /** Figures and words. */
  TEXT,
  /** Words of less weight. */
  QUIET_TEXT,
  /** Dimension lines. */
  DIMENSION,
  /** A tape or string line that belongs to what the hand is doing. */
  STRING,
  /** Where a crack would likely run. */
  CRACK,
  /** A finding that must be mended. */
  MUST,
  /** The figure on it. */
  ON_MUST,
  /** A finding that should be mended. */
  SHOULD,
  /** The figure on it. */
  ON_SHOULD,
  /** A note. */
  NOTE,
  /** What is selected. */
  SELECTED,
  /** The halo under it. */
  SELECTED_HALO,
  /** What is under the pointer. */
  POINTED,
  /** The halo under it. */
  POINTED_HALO,
  /** A thin line of a table; decorates. */
  RULE
}
