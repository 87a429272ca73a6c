/** Says what a plan takes, and how that was worked out, in the reader's words and measures. */
@NullMarked
package org.jointwright.takeoff.words;

import org.jspecify.annotations.NullMarked;
