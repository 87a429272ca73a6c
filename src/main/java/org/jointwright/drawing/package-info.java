/**
 * Neutral marks and the builders that make them of a plan and its layout. The canvas and the sheets
 * paint the same marks: a mark says what it means ({@link org.jointwright.drawing.Role}) and how
 * large it is; the medium chooses colours.
 */
@NullMarked
package org.jointwright.drawing;

import org.jspecify.annotations.NullMarked;
