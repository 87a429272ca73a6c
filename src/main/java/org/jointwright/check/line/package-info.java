/** The rules that look at joints: where they run and end, what they meet, how deep they are. */
@NullMarked
package org.jointwright.check.line;

import org.jspecify.annotations.NullMarked;
