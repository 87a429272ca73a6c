package org.jointwright.layout.exact;

/**
 * What is asked of a cover.
 *
 * @param weight what a foot of joint costs, ft
 * @param fewest how many tiles at least
 * @param most how many at most
 * @param mostSquares the most that the squares of the tiles' areas may add up to, ft to the fourth
 */
record Ask(double weight, int fewest, int most, double mostSquares) {}
