/**
 * Every rule, and judging by them. Start at {@link org.jointwright.check.judge.Checks}: for each
 * slab it asks every {@link org.jointwright.check.Check}; one that throws is reported as a {@link
 * org.jointwright.check.CrashedRule} and the others still judge.
 */
@NullMarked
package org.jointwright.check.judge;

import org.jspecify.annotations.NullMarked;
