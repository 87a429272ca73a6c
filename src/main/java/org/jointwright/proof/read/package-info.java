/** What a printed cut sheet says, understood from its words. */
@NullMarked
package org.jointwright.proof.read;

import org.jspecify.annotations.NullMarked;
