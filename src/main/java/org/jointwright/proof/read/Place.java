package org.jointwright.proof.read;

/**
 * Where on a sheet a figure stands, so that a hand finds it.
 *
 * @param page the page of the sheet, from 1
 * @param block the part of the page
 * @param row the number or the corners that its row begins with, or empty
 * @param part which figure of the row
 */
public record Place(int page, Block block, String row, Part part) {}
