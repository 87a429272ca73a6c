/** Sheets, their pages and papers, scales and inks; the title block, and sheets bound to a set. */
@NullMarked
package org.jointwright.sheet.page;

import org.jspecify.annotations.NullMarked;
