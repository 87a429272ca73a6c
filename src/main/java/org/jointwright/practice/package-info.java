/**
 * Limits and tables of the trade as data, each with its published source; hardly any logic.
 *
 * <p>Every figure is a {@link org.jointwright.practice.Limit} with one {@link
 * org.jointwright.practice.Cited} or more: the document, its edition, the place in it, and how well
 * it is known. A figure that was remembered or chosen says so and is never printed as a standard's.
 * Where documents disagree they stand as named choices. The engine and the checks both read them
 * here and share nothing else but measures.
 */
@NullMarked
package org.jointwright.practice;

import org.jspecify.annotations.NullMarked;
