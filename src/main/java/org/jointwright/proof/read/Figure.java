package org.jointwright.proof.read;

/**
 * A length that is printed on a sheet.
 *
 * @param index its number among the figures of the sheet, from 0
 * @param inches the length, inches
 * @param half half the step that it was rounded to, inches: the true length is no farther off
 * @param place where it stands
 * @param text as it is printed
 */
public record Figure(int index, double inches, double half, Place place, String text) {}
