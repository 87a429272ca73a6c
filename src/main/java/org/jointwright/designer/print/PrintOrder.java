package org.jointwright.designer.print;

import org.jointwright.app.CutSheets;

/**
 * What is to be printed.
 *
 * @param printer the printer's name
 * @param paper the paper
 * @param pages the pages that were chosen, in their order
 */
public record PrintOrder(String printer, PrintPaper paper, CutSheets.Printed pages) {}
