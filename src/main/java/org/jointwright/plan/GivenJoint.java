package org.jointwright.plan;

import org.jointwright.shape.Path;

/**
 * A joint that is there already in concrete beside the slabs. Where it meets a slab's edge the
 * slab's own joints like to meet it. It belongs to no slab and stays where it is when one moves.
 *
 * @param path where it runs
 * @param kept what the file said besides
 */
public record GivenJoint(Path path, Kept kept) {
  /** A given joint of which nothing more is known. */
  public static GivenJoint of(Path path) {
    return new GivenJoint(path, Kept.NOTHING);
  }
}
