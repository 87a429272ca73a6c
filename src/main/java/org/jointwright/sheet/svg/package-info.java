/** Pages written as SVG 1.1, true to size. */
@NullMarked
package org.jointwright.sheet.svg;

import org.jspecify.annotations.NullMarked;
