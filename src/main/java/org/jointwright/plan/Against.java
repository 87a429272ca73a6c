package org.jointwright.plan;

/** What an edge of a slab is against. */
public enum Against {
  /** Open ground. */
  OPEN,
  /** A building. */
  BUILDING,
  /** Concrete that is there already. */
  CONCRETE,
  /** The street's pavement or its curb. */
  STREET,
  /** Asphalt. */
  ASPHALT;

  /** Whether a slab held there needs filler: rules M7. */
  public boolean needsIsolation() {
    return this == BUILDING || this == CONCRETE || this == STREET;
  }
}
