/**
 * The figures of a layout by which it is compared with others: feet to cut, tees, how even and how
 * square the panels are, how many marks are whole, what it costs.
 *
 * <p>In: a {@link org.jointwright.joint.Layout}, whoever laid it. Out: {@link
 * org.jointwright.check.figure.Figures}, plain numbers. Nothing here says what is good enough; the
 * rules do, and the engine, which weighs drafts by its own count, is not asked.
 */
@NullMarked
package org.jointwright.check.figure;

import org.jspecify.annotations.NullMarked;
