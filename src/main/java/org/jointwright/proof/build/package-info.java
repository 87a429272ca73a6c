/** What a finisher with a tape has on the ground after a cut sheet, and where it does not close. */
@NullMarked
package org.jointwright.proof.build;

import org.jspecify.annotations.NullMarked;
