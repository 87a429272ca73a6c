/** The words of a PDF with their places; the only door to PDFBox for reading. */
@NullMarked
package org.jointwright.proof.paper;

import org.jspecify.annotations.NullMarked;
