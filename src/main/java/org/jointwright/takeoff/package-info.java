/**
 * What a plan takes: concrete, stone, forms, filler, cutting and what goes on by the area, each
 * figure with the steps that it was worked out in. Pure functions of a layout.
 */
@NullMarked
package org.jointwright.takeoff;

import org.jspecify.annotations.NullMarked;
