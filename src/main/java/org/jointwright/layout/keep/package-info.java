/**
 * Keeps the pattern of a layout while its plan changes under a hand: what each joint stands on is
 * read from the layout before and worked out again on the plan now, without any search. Inches
 * throughout.
 */
@NullMarked
package org.jointwright.layout.keep;

import org.jspecify.annotations.NullMarked;
