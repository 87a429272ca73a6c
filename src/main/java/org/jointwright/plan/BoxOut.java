package org.jointwright.plan;

/**
 * The piece left out of a slab round a fixed object.
 *
 * @param fixed the id of the object
 * @param outline its edge, counter-clockwise
 * @param kept what the file said besides
 */
public record BoxOut(String fixed, Outline outline, Kept kept) {}
