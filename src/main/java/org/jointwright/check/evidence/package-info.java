/**
 * What the checks look at: the panels of a slab as the rules see them.
 *
 * <p>In: a layout, its joints as wrong as they like. Out: faces with their corners (those less than
 * 1/2 in apart taken together), which of their sides are edges of concrete and which are joints,
 * what was left out round fixed objects, which joints are corner joints, where a line lies on
 * another. Nothing here says what is right; the rules in the package above do.
 */
@NullMarked
package org.jointwright.check.evidence;

import org.jspecify.annotations.NullMarked;
