/**
 * What is asked before the crew's sheets are printed: which pages, on what paper, by which printer.
 *
 * <p>In: pages as pictures, the names of printers. Out: an order, in true size. Knows nothing of
 * the desk, and nothing of how a printer is reached.
 */
@NullMarked
package org.jointwright.designer.print;

import org.jspecify.annotations.NullMarked;
