package org.jointwright.plan;

/**
 * A zone of a slab where no new joint may run: over a drain line, for example. It may reach beyond
 * the slab. Goes with its slab when the slab is moved.
 *
 * @param name what is there, empty where nobody said
 * @param outline its edge, counter-clockwise
 * @param kept what the file said besides
 */
public record KeepClear(String name, Outline outline, Kept kept) {
  /** A zone of which nothing more is known. */
  public static KeepClear of(String name, Outline outline) {
    return new KeepClear(name, outline, Kept.NOTHING);
  }
}
