/**
 * Points, segments, arcs, rings, regions, tolerance, and the measures of a panel. Coordinates are
 * plain doubles in inches, y up; rings are kept counter-clockwise, angles in radians unless a name
 * says degrees. Arcs stay arcs.
 */
@NullMarked
package org.jointwright.shape;

import org.jspecify.annotations.NullMarked;
