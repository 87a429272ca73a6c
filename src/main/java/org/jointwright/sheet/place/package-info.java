/** Where the plan lies on a page, what room is left there, and legend, scale bar and north mark. */
@NullMarked
package org.jointwright.sheet.place;

import org.jspecify.annotations.NullMarked;
