/**
 * What a layout is: panels, the faces that joints cut out of a slab, and the numbers that joints
 * have wherever people see them.
 */
@NullMarked
package org.jointwright.joint;

import org.jspecify.annotations.NullMarked;
