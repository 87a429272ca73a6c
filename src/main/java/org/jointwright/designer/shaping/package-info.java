/**
 * What a hand makes of shapes that are drawn: sides pushed and bent, corners rounded, whole things
 * moved, turned, mirrored, copied. Pure changes of the desk, for gestures, keys and typed figures
 * alike; what would be no slab is refused.
 */
@NullMarked
package org.jointwright.designer.shaping;

import org.jspecify.annotations.NullMarked;
