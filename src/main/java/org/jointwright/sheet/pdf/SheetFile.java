package org.jointwright.sheet.pdf;

/**
 * A file of a printed sheet, not written yet.
 *
 * @param name its name, {@code cut-sheet.pdf} for example
 * @param bytes what is in it; not to be changed
 */
public record SheetFile(String name, byte[] bytes) {}
