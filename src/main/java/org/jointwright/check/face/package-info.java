/**
 * The panels of a slab as the rules see them.
 *
 * <p>In: the panels that the joints of a slab cut. Out: faces with their corners (those less than
 * 1/2 in apart taken together), which of their sides are edges of concrete and which are joints,
 * small steps aside, tight curves, the edges of the concrete with joints left aside. Nothing here
 * says what is right.
 */
@NullMarked
package org.jointwright.check.face;

import org.jspecify.annotations.NullMarked;
