/** What clears a slab of another that it lies over: ways to move it, and cuts. */
@NullMarked
package org.jointwright.fix.apart;

import org.jspecify.annotations.NullMarked;
