/**
 * Pages: scale, title block, tables, the placing of labels, so that texts never touch each other.
 * Places and sizes on a page are millimetres of paper, x to the right and y down from the upper
 * left corner. Text heights and line widths: ASME Y14.2-2008 as quoted by a drafting summary (thin
 * 0.3 mm, thick 0.6 mm at least, dimension text 3 mm at least); the steps of heights 3.5 and 5 mm
 * from ISO 3098, from memory.
 */
@NullMarked
package org.jointwright.sheet;

import org.jspecify.annotations.NullMarked;
