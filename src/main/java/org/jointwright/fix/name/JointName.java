package org.jointwright.fix.name;

/**
 * The name of a joint in what a fix says; a front end that calls joints otherwise, by numbers for
 * example, puts that in its place.
 *
 * @param slab the slab's name
 * @param id the joint's name within it
 */
public record JointName(String slab, String id) {
  /** The joint's name within its slab. */
  @Override
  public String toString() {
    return id;
  }
}
