/**
 * Small deliberate changes that mend what a rule found.
 *
 * <p>In: a layout and one of its findings. Out: up to three fixes, the worthiest first, each an
 * edit of the plan and the key of the words that say it. Start at {@link
 * org.jointwright.fix.Fixes}.
 *
 * <p>Fixes are found by trying: each {@link org.jointwright.fix.Remedy} proposes what a finisher
 * might do, {@link org.jointwright.fix.Trial} does it, cuts the panels anew and has all rules judge
 * them. Only what clears its own finding and breaks nothing else is offered. How many are tried is
 * limited by count. What lines do on a slab is in {@code fix.line}; nothing here knows the engine.
 */
@NullMarked
package org.jointwright.fix;

import org.jspecify.annotations.NullMarked;
