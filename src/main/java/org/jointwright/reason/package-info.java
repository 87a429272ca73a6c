/**
 * Why each joint is there: what it starts from, what would break if it were left out, and where a
 * crack would likely run then. Data only; {@code reason.words} says it.
 */
@NullMarked
package org.jointwright.reason;

import org.jspecify.annotations.NullMarked;
