package org.jointwright.plan;

/**
 * Something that stands in or at a slab and does not move with it.
 *
 * @param id its name within the plan
 * @param slab the id of the slab it stands in
 * @param kind what it is
 * @param shape its outline
 * @param kept what the file said besides
 */
public record FixedObject(String id, String slab, FixedKind kind, FixedShape shape, Kept kept) {
  /** This object in another slab. */
  public FixedObject inSlab(String value) {
    return new FixedObject(id, value, kind, shape, kept);
  }
}
