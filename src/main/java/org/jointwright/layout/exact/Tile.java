package org.jointwright.layout.exact;

/**
 * A rectangle between lines of a {@link Mesh}, a panel that the rules allow.
 *
 * @param left the number of the line at its left
 * @param low the number of the line under it
 * @param right the number of the line at its right
 * @param high the number of the line above it
 * @param halfRound half its perimeter, ft
 * @param area its area, square feet
 */
record Tile(int left, int low, int right, int high, double halfRound, double area) {}
