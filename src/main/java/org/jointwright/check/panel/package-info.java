/** The rules that look at panels: how long, how square, how sharp, how narrow, how whole. */
@NullMarked
package org.jointwright.check.panel;

import org.jspecify.annotations.NullMarked;
