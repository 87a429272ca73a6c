/**
 * The engine: a plan in, a layout out. For each slab it makes the box-outs, holds what the user
 * locked, searches for the joints, squares them up and brings their ends to whole inches, and adds
 * filler where an edge needs it. Pure and limited by counts, never by a clock: the same plan gives
 * the same layout.
 */
@NullMarked
package org.jointwright.layout;

import org.jspecify.annotations.NullMarked;
