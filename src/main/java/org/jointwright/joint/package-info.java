/** What a layout is: panels, and the faces that joints cut out of a slab. */
@NullMarked
package org.jointwright.joint;

import org.jspecify.annotations.NullMarked;
