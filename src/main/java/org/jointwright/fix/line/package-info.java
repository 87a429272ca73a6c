/**
 * What can be done with lines on a slab: chalk one from a place until it meets something, take
 * joints in one line together, and shift or turn such a line with all that ends on it.
 */
@NullMarked
package org.jointwright.fix.line;

import org.jspecify.annotations.NullMarked;
