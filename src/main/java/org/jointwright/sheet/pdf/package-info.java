/** Pages written as PDF with embedded fonts, and as pictures of that PDF. */
@NullMarked
package org.jointwright.sheet.pdf;

import org.jspecify.annotations.NullMarked;
