package org.jointwright.proof.read;

/**
 * A text of a sheet that is not understood.
 *
 * @param place where it stands
 * @param text the text
 */
public record Riddle(Place place, String text) {}
