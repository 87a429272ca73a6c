package org.jointwright.joint;

import org.jointwright.shape.Ring;

/**
 * What is left out of a slab round a fixed object.
 *
 * @param fixed the id of the object
 * @param ring where it runs, counter-clockwise; may reach past the slab
 * @param listed whether the plan lists it as a box-out; else isolation joints enclose it, or it is
 *     the object itself
 */
public record Cutout(String fixed, Ring ring, boolean listed) {}
