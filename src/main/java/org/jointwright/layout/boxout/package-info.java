/**
 * Box-outs round fixed objects (rules M7): turned squares whose corners lie on joint lines, round
 * ones where joints must leave at odd angles, halves at a slab's edge.
 */
@NullMarked
package org.jointwright.layout.boxout;

import org.jspecify.annotations.NullMarked;
