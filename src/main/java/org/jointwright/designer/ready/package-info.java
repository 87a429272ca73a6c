/**
 * Shapes that need no drawing: their sizes, and the outline that follows from them. Knows nothing
 * of a plan or a desk, only of outlines.
 */
@NullMarked
package org.jointwright.designer.ready;

import org.jspecify.annotations.NullMarked;
