package org.jointwright.plan;

/** What a slab carries. */
public enum Use {
  /** People on foot. */
  FOOT,
  /** Cars and light vans. */
  CAR,
  /** Trucks. */
  TRUCK
}
