package org.jointwright.sheet.page;

/**
 * The plan that was found inside a sheet's file.
 *
 * @param plan its text, read no further yet
 * @param place where it stands in the file
 * @param line the line of the file that it begins in, from 1; 1 where it begins by itself
 * @param isAsPrinted whether it is still what the sheet was printed from
 */
public record PlanInside(String plan, String place, int line, boolean isAsPrinted) {}
