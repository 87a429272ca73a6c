/** The rules that come from the user's own word: zones kept clear, pours, settings that clash. */
@NullMarked
package org.jointwright.check.wish;

import org.jspecify.annotations.NullMarked;
