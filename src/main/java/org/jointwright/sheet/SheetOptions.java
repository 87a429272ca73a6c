package org.jointwright.sheet;

import org.jointwright.text.Words;

/**
 * What a sheet is printed with.
 *
 * @param date the sheet's date, ISO 8601 {@code yyyy-mm-dd} or empty, for jobs that say none
 * @param words the reader's language and units
 * @param paper the paper
 */
public record SheetOptions(String date, Words words, Paper paper) {}
