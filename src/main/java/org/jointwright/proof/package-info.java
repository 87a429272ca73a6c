/**
 * Proves a printed cut sheet: reads nothing but its words and figures, as a finisher does, rebuilds
 * outline, joints and box-outs from them, and names a figure that cannot be right. Knows nothing of
 * the plan that it was printed from.
 */
@NullMarked
package org.jointwright.proof;

import org.jspecify.annotations.NullMarked;
