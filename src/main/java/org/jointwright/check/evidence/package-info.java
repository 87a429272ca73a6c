/**
 * What the rules ask of a slab, each worked out once: its panels as {@code face} sees them, where
 * it has concrete, where its joints end and meet, which of them are corner joints, what lines up
 * with the neighbours. In: a layout, its joints as wrong as they like. Nothing here says what is
 * right; the rules do.
 */
@NullMarked
package org.jointwright.check.evidence;

import org.jspecify.annotations.NullMarked;
