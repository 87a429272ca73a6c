/** Reads a printed sheet's words back into outline, joints and box-outs, from the PDF alone. */
package org.jointwright.sheet.readback;
