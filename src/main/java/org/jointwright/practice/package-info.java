/** Limits and tables of the trade as data, each with its published source. No logic. */
@NullMarked
package org.jointwright.practice;

import org.jspecify.annotations.NullMarked;
