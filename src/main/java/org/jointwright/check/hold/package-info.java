/** The rules that look at what holds a slab: its neighbours and what stands in it. */
@NullMarked
package org.jointwright.check.hold;

import org.jspecify.annotations.NullMarked;
