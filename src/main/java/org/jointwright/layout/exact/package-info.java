/**
 * How near a layout is known to be to the cheapest one. For slabs with square corners only: every
 * way of covering one with rectangles between a set of candidate lines is weighed by integer
 * programming, against the rules' cost. The only door to the library that does it. Knows neither
 * the search nor its drafts, so that an error there cannot hide here.
 */
@NullMarked
package org.jointwright.layout.exact;

import org.jspecify.annotations.NullMarked;
